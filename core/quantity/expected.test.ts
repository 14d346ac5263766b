import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { valueIn } from '#tests/support/sample.ts';
import { expectedWords } from './expected.ts';
import { readQuantity } from './read.ts';
import { quantityIds, quantityOf } from './vocabulary.ts';

const gap = '\u202f';

/** The examples that the words give. */
function examplesIn(words: string): string[] {
  return /, for example (.+)$/.exec(words)![1]!.split(' or ');
}

describe('expectedWords', () => {
  it.each([
    ['focal-length', 'a length from 4 mm to 800 mm, for example 50 mm or 2 in'],
    ['f-number', 'an f-number from f/0.95 to f/64, for example f/8'],
    ['magnification', 'a ratio from 0.02× to 20×, for example 0.5× or 1:2'],
    ['exposure-time', 'a time from 1/1000000 s to 3600 s, for example 1/15 s'],
    ['contrast', 'a share from 0 % to 100 %, for example 50 %'],
    ['flash-power', 'a fraction of full power from 1/512 to 1, for example 1/16'],
    ['pixel-pitch', 'a length from 0.5 µm to 30 µm, for example 5 µm'],
    ['frame-count', 'a whole number from 1 to 100000, for example 200'],
    ['close-up-power', 'a power from +0.1 dpt to +50 dpt, for example +2 dpt'],
    ['working-distance', 'a length from −500 mm to 50 m, for example 50 mm or 2 in'],
    ['refractive-index', 'a number from 1 to 4, for example 2'],
  ] as const)('tells what %s takes', (id, words) => {
    expect(expectedWords(id).replaceAll(gap, ' ')).toBe(words);
  });

  it('tells of the range that is asked for', () => {
    expect(expectedWords('extension', { least: 0, most: 36 })).toBe(
      `a length from 0${gap}mm to 36${gap}mm, for example 20${gap}mm or 0.79 in`,
    );
  });

  it.each(quantityIds)('gives examples for %s that are accepted, in any range', (id) => {
    const { least, most } = quantityOf(id);
    fc.assert(
      fc.property(valueIn([least, most]), valueIn([least, most]), (one, other) => {
        const range = { least: Math.min(one, other), most: Math.max(one, other) };
        for (const example of examplesIn(expectedWords(id, range))) {
          expect(readQuantity(id, example, range), example).toMatchObject({ kind: 'value' });
        }
      }),
      {
        seed: 3,
        numRuns: 200,
        examples: [
          [least, most],
          [least, least],
          [most, most],
        ],
      },
    );
  });
});
