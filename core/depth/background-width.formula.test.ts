import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { backgroundWidth } from './background-width.formula.ts';

const view = { fieldWidth: 36, entrancePupilDistance: 150, backgroundDistance: 300 };

describe('backgroundWidth', () => {
  it('is three fields where the background is three times as far as the subject', () => {
    expect(backgroundWidth(view)).toBe(108);
  });

  it('shows half as much beside the field from twice as far', () => {
    const more = backgroundWidth(view) - view.fieldWidth;
    expect(backgroundWidth({ ...view, entrancePupilDistance: 300 }) - view.fieldWidth).toBe(more / 2);
  });

  it('is the field itself in the sharp plane', () => {
    expect(backgroundWidth({ ...view, backgroundDistance: 0 })).toBe(36);
  });

  it('refuses a view from the subject itself by name', () => {
    expect(() => backgroundWidth({ ...view, entrancePupilDistance: 0 })).toThrow(OutOfRange);
    expect(() => backgroundWidth({ ...view, entrancePupilDistance: 0 })).toThrow(/entrance-pupil-distance is 0/);
  });
});
