import { describe, expect, it } from 'vitest';
import { blurDiscTransfer } from '#core/wave/blur-disc-transfer.ts';
import { contrast } from '#core/wave/contrast.formula.ts';
import { opticalTransfer } from '#core/wave/optical-transfer.ts';
import { pointSpreadProfile, strehlRatio } from '#core/wave/point-spread.ts';
import type { Pupil } from '#core/wave/pupil.ts';
import { betweenSamples } from '#tests/support/between-samples.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { fourierBesselTransfer, placesOfIntensity } from '#tests/support/fourier-bessel.ts';
import { nameOfPupils, pathDifference, pupilsToCompare } from '#tests/support/pupils.ts';

const shares = [0.03, 0.1, 0.2, 0.35, 0.5, 0.7, 0.9, 0.97];
const transfer = (pupil: Pupil, s: number) => opticalTransfer({ ...pupil, spatialFrequency: s, cutoffFrequency: 1 });

/** The overlap of two pupils shifted by ±s, rectangle by rectangle, with no symmetry used but that of top and bottom. */
function overlapTransfer(pupil: Pupil, s: number): number {
  const [columns, rows] = [1200, 60];
  const half = Math.acos(s);
  let sum = 0;
  for (let i = 0; i < columns; i++) {
    // x runs over the lens-shaped overlap, whose half height is sin t where |x| = cos t − s.
    const angle = half * (((i + 0.5) / columns) * 2 - 1);
    const x = Math.sign(angle) * (Math.cos(angle) - s);
    const height = Math.abs(Math.sin(angle));
    for (let j = 0; j < rows; j++) {
      const y = (height * (j + 0.5)) / rows;
      const apart = pathDifference(pupil, (x + s) ** 2 + y * y) - pathDifference(pupil, (x - s) ** 2 + y * y);
      sum += Math.cos(2 * Math.PI * apart) * height * height;
    }
  }
  return (4 * half * sum) / (Math.PI * columns * rows);
}

describe.each(pupilsToCompare)(`the transfer of a pupil ${nameOfPupils}`, (pupil) => {
  it('is the overlap of two shifted pupils', () => {
    for (const s of shares) {
      const overlap = overlapTransfer(pupil, s);
      expect(transfer(pupil, s)).toEqual(closeTo(overlap, { absolute: 2e-4, because: 'midpoint rule of 60 rows' }));
    }
  });

  it('is the Hankel transform of the point spread', () => {
    const places = placesOfIntensity(1000);
    const [reach, samples] = [600, 50000];
    const { intensities } = pointSpreadProfile(
      { ...pupil, wavelength: 1, effectiveFNumber: 1, imageRadius: reach },
      samples,
    );
    const wanted = places.map((v) => betweenSamples(intensities, (v / (Math.PI * reach)) * (samples - 1)));
    for (const s of shares) {
      const transformed = fourierBesselTransfer(places, wanted, s);
      expect(transfer(pupil, s)).toEqual(
        closeTo(transformed, { absolute: 4e-5, because: 'the series is cut off after 1000 terms' }),
      );
    }
  });

  it('has a volume that is the brightness of the middle: 8 ∫ OTF s ds', () => {
    const steps = 4000;
    let volume = 0;
    for (let k = 0; k < steps; k++) volume += (8 * transfer(pupil, (k + 0.5) / steps) * (k + 0.5)) / steps ** 2;
    expect(strehlRatio(pupil)).toEqual(closeTo(volume, { absolute: 2e-6, because: 'midpoint rule of 4000 steps' }));
  });

  it('begins at one and stays within what a perfect pupil passes', () => {
    const rounding = { absolute: 1e-12, because: 'rounding' };
    expect(transfer(pupil, 0)).toEqual(closeTo(1, rounding));
    for (const s of shares) {
      expect(Math.abs(transfer(pupil, s))).toBeLessThanOrEqual(contrast({ spatialFrequency: s, cutoffFrequency: 1 }));
    }
  });
});

describe('the transfer far out of focus', () => {
  it('tends to that of the geometric blur disc, the coarser the pattern the nearer', () => {
    // With λ N_w = 1 the blur is 8 W₀₂₀. The same product of blur and frequency at ever more waves and ever smaller s.
    const product = 0.8;
    const parted = [4, 16, 64].map((waves) => {
      const s = product / (8 * waves);
      const geometry = blurDiscTransfer({ defocusBlur: 8 * waves, spatialFrequency: s });
      return Math.abs(transfer({ defocusAberration: waves, sphericalAberration: 0 }, s) - geometry);
    }) as [number, number, number];
    expect(parted[0]).toBeLessThan(0.05);
    expect(parted[0] / parted[1]).toEqual(closeTo(4, { relative: 0.15, because: 'they part in proportion to s' }));
    expect(parted[1] / parted[2]).toEqual(closeTo(4, { relative: 0.05, because: 'they part in proportion to s' }));
  });
});
