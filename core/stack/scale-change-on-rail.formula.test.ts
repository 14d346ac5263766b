import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { scaleChangeOnRail } from './scale-change-on-rail.formula.ts';

/** Half a millimetre nearer, from 100.5 mm. */
const rail = { frameStep: 0.5, entrancePupilDistance: 100.5 };

describe('scaleChangeOnRail', () => {
  it('is half a per cent for half a millimetre from 100.5 mm', () => {
    expect(scaleChangeOnRail(rail)).toBe(0.005);
  });

  it('multiplies up over two steps to that of the double step', () => {
    const first = 1 + scaleChangeOnRail(rail);
    const second = 1 + scaleChangeOnRail({ frameStep: 0.5, entrancePupilDistance: 100 });
    expect(first * second).toEqual(
      closeTo(1 + scaleChangeOnRail({ ...rail, frameStep: 1 }), { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('tends to step over distance for small steps', () => {
    expect(scaleChangeOnRail({ ...rail, frameStep: 1e-9 })).toEqual(
      closeTo(1e-9 / 100.5, { relative: 1e-10, because: 'they part by step over distance' }),
    );
  });

  it('refuses a step to the detail by name', () => {
    expect(() => scaleChangeOnRail({ ...rail, frameStep: 100.5 })).toThrow(OutOfRange);
    expect(() => scaleChangeOnRail({ ...rail, frameStep: 100.5 })).toThrow(/frame-step is 100.5/);
  });
});
