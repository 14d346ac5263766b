import { describe, expect, it } from 'vitest';
import { closeTo } from './close-to.ts';
import { compare, readCases, type Ours } from './reference-case.ts';

/**
 * Makes one test of each case of an outside check: the core's answer against what the source prints.
 *
 * @param json what `cases.json` holds
 * @param ours the core's answer to a case, from the `ours.ts` beside it
 * @throws Error where there is no case, or a row lacks something: an outside check that checks nothing must fail
 */
export function describeReference(json: unknown, ours: Ours): void {
  const cases = readCases(json);
  describe('agrees with its sources', () => {
    it.each(cases.map((row) => [`${row.id}: ${row.title}`, row] as const))('%s', (_, row) => {
      const compared = compare(row, ours);
      const got = compared.map(({ label, ours: number }) => [label, number]);
      const wanted = compared.map(({ label, expected, allowed }) => [
        label,
        closeTo(expected, { absolute: allowed, because: row.because }),
      ]);
      expect(Object.fromEntries(got)).toEqual(Object.fromEntries(wanted));
    });
  });
}
