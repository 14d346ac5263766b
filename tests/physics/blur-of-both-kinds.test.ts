import { describe, expect, it } from 'vitest';
import { defocusAberration } from '#core/wave/defocus-aberration.formula.ts';
import { opticalTransfer } from '#core/wave/optical-transfer.ts';
import { closeTo } from '#tests/support/close-to.ts';

const wavelength = 0.00055;
const c = 0.025;

/** What is left at 1/(2c) where defocus and diffraction together, by root of squares, fill the circle of confusion. */
function contrastWhere(share: number) {
  const defocusBlur = c * Math.cos(share);
  const effectiveFNumber = (c * Math.sin(share)) / wavelength;
  return opticalTransfer({
    spatialFrequency: 1 / (2 * c),
    cutoffFrequency: 1 / (wavelength * effectiveFNumber),
    defocusAberration: defocusAberration({ defocusBlur, wavelength, effectiveFNumber }),
    sphericalAberration: 0,
  });
}

describe('the rule by which a kit is searched, b² + (λ N_w)² = c²', () => {
  const shares = Array.from({ length: 41 }, (_, k) => 0.03 + ((Math.PI / 2 - 0.03) * k) / 40);

  it('keeps between two and three quarters of contrast and two fifths of it at the detail that c allows', () => {
    const contrasts = shares.map(contrastWhere);
    expect(Math.max(...contrasts)).toBeLessThan(0.73);
    expect(Math.min(...contrasts)).toBeGreaterThan(0.39);
  });

  it('is geometry’s own where the cone is wide, and the limit of a flat subject where it is slender', () => {
    // 2 J1(π/2)/(π/2) of an evenly bright disc as wide as c; a perfect pupil at half its cutoff.
    expect(contrastWhere(0.03)).toEqual(closeTo(0.7217, { absolute: 0.02, because: 'some diffraction is left' }));
    expect(contrastWhere(Math.PI / 2)).toEqual(closeTo(0.391, { absolute: 5e-4, because: 'three figures' }));
  });
});
