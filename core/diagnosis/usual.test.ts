import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { evaluateFormula, type Formula } from '#core/quantity/formula.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { bridges, lastly, setUps, unless, usual } from './usual.ts';

const all = [...bridges, ...lastly.map(({ by }) => by)];
const evaluated = (id: string, given: Readonly<Record<string, number>>): number => {
  const { formula } = all.find((one) => one.id === id)!;
  return evaluateFormula(formula as unknown as Formula, given as Record<QuantityName, number>);
};

describe('steps that are hardly formulas', () => {
  // By hand, each from what its sentence says.
  it.each<[string, Readonly<Record<string, number>>, number]>([
    ['one-over-the-pupil-distance', { 'entrance-pupil-distance': 80 }, 0.0125],
    ['depth-by-the-close-up-form', { 'depth-of-field-close-up': 1.06 }, 1.06],
    ['both-sides-of-the-depth', { 'near-limit': 3, 'far-limit': 5 }, 8],
    ['width-by-the-crop-factor', { 'crop-factor': 1.5 }, 24],
    ['half-the-depth-before', { 'depth-of-field': 3 }, 1.5],
    ['half-the-depth-behind', { 'depth-of-field': 3 }, 1.5],
    ['light-lost-whatever-the-mark', { magnification: 1, 'pupil-magnification': 1 }, 2],
    ['light-lost-whatever-the-mark', { magnification: 1, 'pupil-magnification': 0.5 }, 2 * Math.log2(3)],
    ['light-lost-behind-a-converter', { 'converter-factor': 2, magnification: 1, 'pupil-magnification': 0.5 }, 4],
    ['height-at-three-to-two', { 'sensor-width': 36 }, 24],
    ['height-at-four-to-three', { 'sensor-width': 17.2 }, 12.9],
    ['height-at-four-to-three', { 'sensor-width': 44 }, 33],
    ['marked-f-number-far-away', { 'f-number': 8 }, 8],
    ['mark-to-set-far-away', { 'effective-f-number': 11 }, 11],
    ['lens-on-a-converter', { 'converter-factor': 2, 'focus-magnification': 0.25 }, 0.5],
    ['objective-as-it-is-made-for', { 'objective-magnification': 10 }, 10],
    ['frames-by-their-step', { 'subject-depth': 10, 'frame-step': 0.5 }, 21],
    ['frames-by-their-step', { 'subject-depth': 10.1, 'frame-step': 0.5 }, 22],
    // Rounding makes 0.3 of three tenths a little more: no frame for that.
    ['frames-by-their-step', { 'subject-depth': 0.1 + 0.2, 'frame-step': 0.1 }, 4],
  ])('%s of %o', (id, given, expected) => {
    expect(evaluated(id, given)).toEqual(closeTo(expected, { relative: 1e-12, because: 'rounding' }));
  });

  it('give four to three to no sensor that is mostly three to two', () => {
    for (const width of [20.1, 23.5, 36, 39.9])
      expect(() => evaluated('height-at-four-to-three', { 'sensor-width': width })).toThrow(OutOfRange);
    expect(evaluated('height-at-four-to-three', { 'sensor-width': 20 })).toBe(15);
    expect(evaluated('height-at-four-to-three', { 'sensor-width': 40 })).toBe(30);
    expect(() => evaluated('height-at-four-to-three', { 'sensor-width': 36 })).toThrow(/below 20 mm or above 40 mm/);
  });

  it('stand once each, are checked by nothing from outside, and hold where their quantity’s own formula does', () => {
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
    for (const { formula } of all) expect([formula.checkedBy, formula.source]).toEqual([[], 'core/depth/README.md']);
    const without = all.filter((one) => one.unless);
    expect(without.map((one) => [one.id, one.unless])).toEqual([
      ['light-lost-whatever-the-mark', ['converter-factor']],
      ['objective-as-it-is-made-for', ['focal-length']],
    ]);
    const needing = all.filter((one) => one.needs);
    expect(needing.map((one) => [one.id, one.needs])).toEqual([
      ['lens-on-a-converter-as-it-is-set', ['focus-magnification']],
    ]);
  });

  it('that are taken lastly answer what they give, or what follows from it', () => {
    for (const { by, answers } of lastly) {
      const isDirect = answers === undefined || (answers as readonly string[]).includes(by.formula.gives);
      expect(isDirect || by.id === 'marked-f-number-far-away', by.id).toBe(true);
    }
    expect(lastly[0]!.answers).toEqual(['exposure-value', 'light-value', 'exposure-time', 'iso', 'flash-distance']);
  });
});

describe('what is usual', () => {
  it('is said once of each quantity, in a clause', () => {
    expect(new Set(usual.map(({ quantity }) => quantity)).size).toBe(usual.length);
    for (const { words } of usual) expect(words).toMatch(/^[a-zA-Z].*[^.]$/);
  });

  it('names set-ups of formulas, and no formula as both for a set-up and without it', () => {
    for (const id of Object.keys(setUps)) expect(unless[id]).toBeUndefined();
  });
});
