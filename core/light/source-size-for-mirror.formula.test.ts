import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { sourceSizeForMirror } from './source-size-for-mirror.formula.ts';

const film = { fieldWidth: 60, flashDistance: 100, entrancePupilDistance: 200, entrancePupil: 10 };

describe('sourceSizeForMirror', () => {
  it('is 95 mm for 60 mm of film seen from 200 mm through an opening of 10 mm, the light 100 mm off', () => {
    expect(sourceSizeForMirror(film)).toEqual(closeTo(95, { relative: 1e-15, because: 'a few roundings' }));
  });

  it('grows evenly as the light is drawn back', () => {
    const more = (flashDistance: number) => sourceSizeForMirror({ ...film, flashDistance });
    expect(more(300) - more(200)).toEqual(closeTo(more(200) - more(100), { relative: 1e-13, because: 'roundings' }));
  });

  it('is the field itself for a light at the film, and for an eye infinitely far', () => {
    expect(sourceSizeForMirror({ ...film, flashDistance: 0 })).toBe(60);
    expect(sourceSizeForMirror({ ...film, entrancePupilDistance: 1e9 })).toEqual(
      closeTo(60, { relative: 1e-6, because: 'an eye a thousand kilometres off' }),
    );
  });

  it('refuses a field of no width and a light behind the film by name', () => {
    expect(() => sourceSizeForMirror({ ...film, fieldWidth: 0 })).toThrow(/field-width is 0/);
    expect(() => sourceSizeForMirror({ ...film, flashDistance: -1 })).toThrow(OutOfRange);
    expect(() => sourceSizeForMirror({ ...film, entrancePupilDistance: 0 })).toThrow(OutOfRange);
    expect(() => sourceSizeForMirror({ ...film, entrancePupil: NaN })).toThrow(OutOfRange);
  });
});
