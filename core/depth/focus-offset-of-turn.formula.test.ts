import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { focusOffsetOfTurn } from './focus-offset-of-turn.formula.ts';

const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('focusOffsetOfTurn', () => {
  it('is half the distance, towards the lens, for a turn of 60°', () => {
    expect(focusOffsetOfTurn({ entrancePupilDistance: 100, turnAngle: Math.PI / 3 })).toEqual(closeTo(-50, rounding));
  });

  it('goes as the distance', () => {
    const turned = (entrancePupilDistance: number) => focusOffsetOfTurn({ entrancePupilDistance, turnAngle: 0.1 });
    expect(turned(300)).toEqual(closeTo(3 * turned(100), rounding));
  });

  it('goes as the square of a small turn, and is nothing without one', () => {
    const turned = (turnAngle: number) => focusOffsetOfTurn({ entrancePupilDistance: 1, turnAngle });
    expect(turned(1e-6)).toEqual(closeTo(-5e-13, { relative: 1e-12, because: 'the next term is β²/12 of it' }));
    expect(turned(0)).toBe(0);
  });

  it('refuses a turn of more than a right angle by name', () => {
    expect(() => focusOffsetOfTurn({ entrancePupilDistance: 100, turnAngle: 2 })).toThrow(OutOfRange);
    expect(() => focusOffsetOfTurn({ entrancePupilDistance: 100, turnAngle: 2 })).toThrow(/turn-angle is 2/);
  });
});
