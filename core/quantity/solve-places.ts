import { OutOfRange } from './errors.ts';
import type { Range } from './expected.ts';
import { between, edgeOf, finest } from './bisect.ts';

/** A value of the letter that is asked for, and what the left side is there. */
export interface Place {
  readonly x: number;
  readonly y: number;
  /** The left side rises on one of its sides and falls on the other. */
  readonly isTurn: boolean;
}

/** Places from small to large between which the function answers everywhere, and nowhere turns but at a place that says so. */
export type Stretch = readonly Place[];

/** The function, or undefined where it refuses. */
export type Answer = (x: number) => number | undefined;

/** How many cells a range is cut into. The formulas' pieces are few and wide; those of films say where they turn. */
const cells = 128;

/**
 * Where a function of one variable answers within a range, in stretches: each from edge to edge of its domain, with its turning points.
 *
 * @param known where it may turn besides, if that is known
 */
export function stretchesOf(at: Answer, range: Range, isByRatio: boolean, known: readonly number[] = []): Stretch[] {
  const inside = known.filter((x) => x > range.least && x < range.most);
  const xs = [...new Set([...grid(range, isByRatio), ...inside])].sort((one, other) => one - other);
  const stretches = split(at, xs);
  const turned: Stretch[] = [];
  for (const stretch of stretches) {
    const found = withTurns(at, stretch);
    // A pole between two places, met while looking for the top: the function refuses there, and its domain ends on both sides.
    if (typeof found === 'number') return stretchesOf(at, range, isByRatio, [...inside, found]);
    turned.push(found);
  }
  return turned;
}

/** By ratio above zero; else even, or from zero on ever wider, so that a thousandth of the range is looked at as closely as the rest. */
function grid({ least, most }: Range, isByRatio: boolean): number[] {
  const share = Array.from({ length: cells + 1 }, (_, cell) => cell / cells);
  const last = (x: number, index: number) => (index === 0 ? least : index === cells ? most : x);
  if (least > 0) {
    return share.map((part, k) => last(isByRatio ? least * (most / least) ** part : least + (most - least) * part, k));
  }
  const small = Math.max(-least, most) * 1e-6;
  const [from, to] = [Math.asinh(least / small), Math.asinh(most / small)];
  const places = share.map((part, k) => last(small * Math.sinh(from + (to - from) * part), k));
  return [...places, ...(most > 0 ? [0] : []), ...share.map((part, k) => last(least + (most - least) * part, k))];
}

function split(at: Answer, xs: readonly number[]): Place[][] {
  const stretches: Place[][] = [];
  let open: Place[] | undefined;
  let before: number | undefined;
  for (const x of xs) {
    const y = at(x);
    if (y !== undefined) {
      if (!open) {
        stretches.push((open = []));
        // From inside out: the last place that still answers.
        if (before !== undefined)
          push(
            open,
            at,
            edgeOf(x, before, (place) => at(place) !== undefined),
          );
      }
      push(open, at, x);
    } else {
      if (open)
        push(
          open,
          at,
          edgeOf(before!, x, (place) => at(place) !== undefined),
        );
      open = undefined;
    }
    before = x;
  }
  return stretches;
}

function push(stretch: Place[], at: Answer, x: number): void {
  if (stretch.at(-1)?.x !== x) stretch.push({ x, y: at(x)!, isTurn: false });
}

/** The stretch with a place at each of its turning points; or a place where the function refuses, if one was met. */
function withTurns(at: Answer, stretch: Stretch): Stretch | number {
  const places: Place[] = [stretch[0]!];
  for (let k = 1; k < stretch.length - 1; k++) {
    const here = stretch[k]!;
    const before = stretch[k - 1]!;
    // Two places as high as each other may stand on both sides of the top.
    const level = stretch[k + 1]!.y === here.y && k + 2 < stretch.length ? 1 : 0;
    const after = stretch[k + 1 + level]!;
    const sense = Math.sign(here.y - before.y);
    if (sense === 0 || Math.sign(here.y - after.y) !== sense) {
      places.push(here);
      continue;
    }
    const top = topBetween(at, before.x, after.x, sense);
    if (top.y === undefined) return top.x;
    const best = (top.y - here.y) * sense > 0 ? { x: top.x, y: top.y, isTurn: true } : { ...here, isTurn: true };
    places.push(...(best.x < here.x ? [best, here] : best.x > here.x ? [here, best] : [best]));
  }
  if (stretch.length > 1) places.push(stretch.at(-1)!);
  return places;
}

const golden = (Math.sqrt(5) - 1) / 2;

/** The highest place between two, or the lowest for a negative *sense*. Golden section: Kiefer, Proc. Amer. Math. Soc. 4 (1953) 502 (from memory). */
function topBetween(at: Answer, from: number, to: number, sense: number): { x: number; y: number | undefined } {
  let left = to - golden * (to - from);
  let right = from + golden * (to - from);
  let [atLeft, atRight] = [at(left), at(right)];
  const enough = (to - from) * finest;
  while (to - from > enough && between(from, to) !== undefined) {
    if (atLeft === undefined) return { x: left, y: undefined };
    if (atRight === undefined) return { x: right, y: undefined };
    if (!(left < right)) break;
    if ((atLeft - atRight) * sense >= 0) {
      to = right;
      [right, atRight] = [left, atLeft];
      left = to - golden * (to - from);
      atLeft = at(left);
    } else {
      from = left;
      [left, atLeft] = [right, atRight];
      right = from + golden * (to - from);
      atRight = at(right);
    }
  }
  return { x: left, y: atLeft };
}

/** A function that throws OutOfRange as one that gives undefined there. Anything else that is thrown goes on. */
export function orUndefined(evaluate: (x: number) => number): Answer {
  return (x) => {
    try {
      return evaluate(x);
    } catch (error) {
      if (error instanceof OutOfRange) return undefined;
      throw error;
    }
  };
}
