import { marksAt, mostDrift, placeOfMark, type CombShape } from './comb.ts';

/** Closer marks than that are fewer than two pixels apart in the widest photograph. */
const mostMarks = 1e5;

/** Where marks stand along the line, from 0 at its beginning to 1 at its end, in order. Throws RangeError for a comb that is none. */
export function placesOfMarks(comb: CombShape & { readonly phase: number }): readonly number[] {
  if (!(comb.cycles > 0 && comb.cycles <= mostMarks && Math.abs(comb.drift) <= mostDrift))
    throw new RangeError(
      `a comb of ${comb.cycles} marks, drifting by ${comb.drift}; accepted: 0 to ${mostMarks}, drift up to ${mostDrift}`,
    );
  const places: number[] = [];
  const [first, last] = [marksAt(comb, -0.5), marksAt(comb, 0.5)];
  for (let k = Math.ceil(first - comb.phase) + comb.phase; k <= last; k++) places.push(placeOfMark(comb, k) + 0.5);
  return places;
}
