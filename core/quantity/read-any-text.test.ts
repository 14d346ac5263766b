import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readQuantity } from './read.ts';
import { quantityIds, quantityOf } from './vocabulary.ts';

/** Text as people type it, fall on it or attack with it. */
const pieces = fc.constantFrom(
  ...'0123456789.,/:+-−× xXfFƒ%°"½²e'.split(''),
  ...[
    'mm',
    'cm',
    'in',
    's',
    'µm',
    'dpt',
    ' ',
    '\u202f',
    'Infinity',
    'NaN',
    '0x',
    'e5',
    '1,500',
    '000',
    '1/',
    '__proto__',
  ],
);
const anyText = fc.oneof(
  fc.array(pieces, { maxLength: 12 }).map((parts) => parts.join('')),
  fc.string({ unit: 'binary' }),
);
const anyEnd = fc.oneof(fc.double({ noNaN: true }), fc.constantFrom(0, -Infinity, Infinity, 1, 10));

describe('any text', () => {
  it('gives a finite value in range, nothing, or a refusal in words; it never throws', () => {
    fc.assert(
      fc.property(fc.constantFrom(...quantityIds), anyText, (id, text) => {
        const reading = readQuantity(id, text);
        const { least, most } = quantityOf(id);
        if (reading.kind === 'value') {
          expect(reading.value).toBeGreaterThanOrEqual(least);
          expect(reading.value).toBeLessThanOrEqual(most);
        } else if (reading.kind !== 'blank') {
          expect(reading.message).toContain(reading.expected);
          expect(reading.expected).not.toMatch(/NaN|undefined|∞/);
          if (reading.kind === 'out-of-range') expect(Number.isFinite(reading.value)).toBe(true);
        }
      }),
      { seed: 5, numRuns: 20_000 },
    );
  });

  it('does so in any range, however strange', () => {
    fc.assert(
      fc.property(fc.constantFrom(...quantityIds), anyText, anyEnd, anyEnd, (id, text, least, most) => {
        const reading = readQuantity(id, text, { least, most });
        if ('value' in reading) expect(reading.value).not.toBeNaN();
        if ('expected' in reading) expect(reading.expected).not.toMatch(/NaN|undefined/);
      }),
      { seed: 6, numRuns: 5000 },
    );
  });

  it('means the same with a decimal comma, unless that could separate thousands', () => {
    const digits = fc.integer({ min: 0, max: 9999 });
    fc.assert(
      fc.property(digits, fc.stringMatching(/^(\d|\d{2}|\d{4,6})$/), (whole, decimals) => {
        const point = readQuantity('edge-shift', `${whole}.${decimals} px`);
        const comma = readQuantity('edge-shift', `${whole},${decimals} px`);
        expect({ ...comma, message: '' }).toEqual({ ...point, message: '' });
      }),
      { seed: 7, numRuns: 500 },
    );
  });
});
