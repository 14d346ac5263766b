import { describe, expect, it } from 'vitest';
import { degree } from '#core/quantity/units.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { headJob, planeInPicture, type HeadShot } from './heads.ts';

const lens = { magnification: 2, pupilMagnification: 1, entrancePupilDistance: 130, pixelPitch: 0.006 };
const job = (shot: Partial<HeadShot>) =>
  headJob(lens, { turned: 20 * degree, effectiveFNumber: 24, focusOffset: 0, at: 'nearer eye', ...shot });
const rounding = { absolute: 1e-9, because: 'rounding' };

describe('the sharp plane over the picture of a turned head', () => {
  it('stands at the middle of the head where that is focused on, and right of it at the nearer eye', () => {
    expect(planeInPicture(job({ at: 'midway' }))).toEqual(closeTo(0.5, rounding));
    const { view } = job({});
    // The eye is 0.74 mm aside.
    const share = 0.5 + (0.74 * view.magnification) / (view.columns * view.pitch);
    expect(planeInPicture(job({}))).toEqual(closeTo(share, rounding));
  });

  it('moves aside by the focus offset over the tangent of the turn', () => {
    const { view } = job({});
    const moved = planeInPicture(job({ at: 'midway', focusOffset: 0.1 }))! - 0.5;
    const aside = (moved * view.columns * view.pitch) / view.magnification;
    expect(aside).toEqual(closeTo(0.1 / Math.tan(20 * degree), rounding));
  });

  it('is nowhere square on, nor where it passes beside the picture', () => {
    expect(planeInPicture(job({ turned: 0 }))).toBeUndefined();
    expect(planeInPicture(job({ turned: 2 * degree, focusOffset: 1 }))).toBeUndefined();
  });
});
