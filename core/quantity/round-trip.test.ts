import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { valueIn } from '#tests/support/sample.ts';
import { exactFNumber, exactShutterTime, fNumberSeries, shutterTimeSeries } from './nominal.ts';
import { printQuantity } from './print.ts';
import { readQuantity } from './read.ts';
import { unitWorth } from './units.ts';
import { quantityIds, quantityOf, type QuantityId } from './vocabulary.ts';

function valueRead(id: QuantityId, text: string): number {
  const reading = readQuantity(id, text);
  if (reading.kind !== 'value') throw new Error(`${text} is ${reading.kind} for ${id}`);
  return reading.value;
}

/** How far printing may round. */
function printedPrecision(id: QuantityId, value: number) {
  const { base, shown, writing } = quantityOf(id);
  if (writing === 'whole') return { absolute: 0.5, because: 'printed in whole numbers' };
  if (base === 'stops') return { absolute: 0.05 + 1e-12, because: 'printed to a tenth of a stop' };
  const least = 1e-6 * unitWorth(base, shown)!;
  if (Math.abs(value) < least) return { absolute: least, because: 'what is under a millionth is printed as nothing' };
  // Half of the third digit is 0.5 % at most, for 1.00; the division in 1/200 adds nothing that matters.
  return { relative: 0.00501, because: 'printed to three figures' };
}

describe.each(quantityIds)('%s', (id) => {
  const { least, most } = quantityOf(id);

  it.each([{}, { exact: true }, { ratio: true }])('is read as it was printed, with %j', (options) => {
    fc.assert(
      fc.property(valueIn([least, most]), (value) => {
        expect(valueRead(id, printQuantity(id, value, options))).toEqual(closeTo(value, printedPrecision(id, value)));
      }),
      { seed: 4, numRuns: 300 },
    );
  });

  it('is printed the same again once it was read', () => {
    fc.assert(
      fc.property(valueIn([least, most]), (value) => {
        const text = printQuantity(id, value);
        expect(printQuantity(id, valueRead(id, text))).toBe(text);
      }),
      { seed: 4, numRuns: 300 },
    );
  });
});

describe('the marked series', () => {
  it('is read back mark by mark, from the marks and from the exact values behind them', () => {
    for (const mark of fNumberSeries.filter((each) => each >= 1 && each <= 64)) {
      expect(valueRead('f-number', printQuantity('f-number', mark))).toBe(mark);
      expect(valueRead('f-number', printQuantity('f-number', exactFNumber(mark)!))).toBe(mark);
    }
    for (const mark of shutterTimeSeries) {
      const printed = printQuantity('exposure-time', exactShutterTime(mark)!);
      expect(valueRead('exposure-time', printQuantity('exposure-time', mark))).toBe(mark);
      expect(valueRead('exposure-time', printed)).toBe(mark);
    }
  });
});
