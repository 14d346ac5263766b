import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { families, stopsLost } from '#tests/support/example-families.ts';
import { practiceText, readPracticeText } from './address.ts';
import { isSeed, mostSeed, nextSeed } from './seed.ts';

const seeds = fc.integer({ min: 1, max: mostSeed });

describe('the text of a problem in an address', () => {
  it('names family and number', () => {
    expect(practiceText({ family: 'stops-lost', seed: 12 })).toBe('stops-lost:12');
  });

  it('is read back as it was written', () => {
    fc.assert(
      fc.property(fc.constantFrom(...families), seeds, (family, seed) => {
        const reading = readPracticeText(practiceText({ family: family.id, seed }), families);
        expect(reading).toEqual({ kind: 'value', family, seed });
      }),
      { seed: 1 },
    );
  });

  it.each(
    [
      '',
      'stops-lost',
      'stops-lost:',
      'stops-lost:0',
      'stops-lost:1000000',
      'stops-lost:1.5',
      'stops-lost:-1',
      'stops-lost:1:2',
    ].concat(['stops-lost:1e3', 'stops-lost: 1', 'Stops-lost:1', 'other:1', '1', 'constructor:1']),
  )('is refused in words where it is “%s”', (text) => {
    expect(readPracticeText(text, families)).toEqual({
      kind: 'unreadable',
      message: `The link asks for a problem “${text}” that is not here. You see the first problem instead.`,
    });
  });

  it('is read or refused, whatever it is, and quoted back only in part', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        const reading = readPracticeText(text, families);
        if (reading.kind === 'unreadable') expect(reading.message.length).toBeLessThan(120);
      }),
      { seed: 1 },
    );
  });
});

describe('the number of a problem', () => {
  it('is followed by another that a problem may have, and the last by the first', () => {
    fc.assert(
      fc.property(seeds, (seed) => isSeed(nextSeed(seed))),
      { seed: 1 },
    );
    expect([nextSeed(1), nextSeed(mostSeed)]).toEqual([2, 1]);
    expect(() => nextSeed(NaN)).toThrow(RangeError);
  });

  it('is whole and a number', () => {
    expect([stopsLost, '12', 1.5, 0, NaN, null].map(isSeed)).toEqual(Array.from({ length: 6 }, () => false));
  });
});
