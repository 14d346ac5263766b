import { marksAt, placeOfMark, type CombShape } from './comb.ts';

/** Where marks stand along the line, from 0 at its beginning to 1 at its end, in order. */
export function placesOfMarks(comb: CombShape & { readonly phase: number }): readonly number[] {
  const places: number[] = [];
  const [first, last] = [marksAt(comb, -0.5), marksAt(comb, 0.5)];
  for (let k = Math.ceil(first - comb.phase) + comb.phase; k <= last; k++) places.push(placeOfMark(comb, k) + 0.5);
  return places;
}
