import { chanceFrom } from '#core/chance/chance-from.ts';

/** Picks the numbers of a problem. The same seed gives the same picks in every browser. */
export interface Draw {
  /** One of *list*, which holds at least one thing. */
  readonly pick: <const T>(list: readonly T[]) => T;
  /** One of *least*, *least + step*, ... up to *most*, each as often. */
  readonly between: (least: number, most: number, step: number) => number;
  /** A number with so many significant *figures* (2 if not said), as often in each doubling from *least*, above 0, to *most*. */
  readonly logStep: (least: number, most: number, figures?: number) => number;
}

/** The picks that belong to *seed*. */
export function drawFrom(seed: number): Draw {
  const chance = chanceFrom(seed);
  const below = (count: number) => Math.floor(chance() * count);
  return {
    pick: (list) => list[below(list.length)]!,
    // The billionth keeps a last step that binary fractions let fall short.
    between: (least, most, step) => decimal(least + below(Math.floor((most - least) / step + 1e-9) + 1) * step, 12),
    logStep: (least, most, figures = 2) =>
      Math.min(most, Math.max(least, decimal(least * (most / least) ** chance(), figures))),
  };
}

/** *value* to so many significant figures: 0.1 + 0.2 becomes 0.3. */
function decimal(value: number, figures: number): number {
  return Number(value.toPrecision(figures));
}
