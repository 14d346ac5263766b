import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { byBody, circleChoice } from './body-circle.ts';
import { ownCircle } from './kept-circle.ts';

const name = 'circle-of-confusion';

/** What of a bench this needs. */
export interface CircleBench {
  readonly starts: object;
  readonly inputs: object;
  set(name: never, value: number): void;
  chosen(choice: string): string | undefined;
}

/** The circle of confusion that a bench is set to; undefined where it knows none. */
export function circleOf(bench: CircleBench): number | undefined {
  return (bench.inputs as Readonly<Partial<Record<QuantityName, number>>>)[name];
}

/** Sets *bench* to the reader's own, unless the address *search* says which, or that of a step of the demonstration does all. */
export function bringOwnCircle(bench: CircleBench, search: string): void {
  const address = new URLSearchParams(search);
  if (circleOf(bench) === undefined || [name, circleChoice, 'stage'].some((said) => address.has(said))) return;
  const own = ownCircle.read().value;
  if (own !== null) bench.set(name as never, own);
}

/**
 * Keeps what the reader has made of the circle of confusion by setting *input*, and gives what is kept: another one is the reader's own,
 * the body's is none.
 */
export function keepCircle(bench: CircleBench, input: string, before: number | undefined): number | null {
  const now = circleOf(bench);
  const isSaid = input === name || input === circleChoice;
  if (now === undefined || (now === before && !isSaid)) return ownCircle.read().value;
  const isBodys = bench.chosen(circleChoice) === byBody;
  // A body that brings its own circle along says nothing of the reader's.
  if (isSaid || !isBodys) ownCircle.write(isBodys ? null : now);
  return ownCircle.read().value;
}
