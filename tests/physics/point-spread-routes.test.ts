import besselj0 from '@stdlib/math-base-special-besselj0';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { energyProfile } from '#core/wave/energy-profile.ts';
import { pointSpreadProfile, strehlRatio } from '#core/wave/point-spread.ts';
import type { Pupil } from '#core/wave/pupil.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { nameOfPupils, pathDifference, pupilsToCompare } from '#tests/support/pupils.ts';

/** With λ N_w = 1 the optical radius is v = π r. */
const unit = { wavelength: 1, effectiveFNumber: 1 };

/** The radial Hankel integral as it is written in books, by a midpoint rule in ρ² and a library's J0. */
function hankelIntensity(pupil: Pupil, v: number, steps = 4000): number {
  let [re, im] = [0, 0];
  for (let k = 0; k < steps; k++) {
    const t = (k + 0.5) / steps;
    const wave = besselj0(v * Math.sqrt(t)) / steps;
    re += wave * Math.cos(2 * Math.PI * pathDifference(pupil, t));
    im += wave * Math.sin(2 * Math.PI * pathDifference(pupil, t));
  }
  return re * re + im * im;
}

describe.each(pupilsToCompare)(`the point spread of a pupil ${nameOfPupils}`, (pupil) => {
  it('is what the radial Hankel integral says', () => {
    const { radii, intensities } = pointSpreadProfile({ ...pupil, ...unit, imageRadius: 30 }, 61);
    radii.forEach((radius, n) => {
      const expected = hankelIntensity(pupil, Math.PI * radius);
      expect(intensities[n]).toEqual(closeTo(expected, { absolute: 3e-6, because: 'midpoint rule of 4000 steps' }));
    });
  });

  it('sums, circle by circle, to the encircled energy', () => {
    const [samples, reach, circles] = [8001, 40, 8];
    const { radii, intensities } = pointSpreadProfile({ ...pupil, ...unit, imageRadius: reach }, samples);
    const { shares } = energyProfile({ ...pupil, ...unit, imageRadius: reach }, circles + 1);
    const every = (samples - 1) / circles;
    // The trapezium rule on ½ ∫ I v dv.
    const density = radii.map((radius, n) => ((intensities[n] as number) * Math.PI * radius) / 2);
    const step = (Math.PI * reach) / (samples - 1);
    let within = 0;
    for (let n = 1; n < samples; n++) {
      within += (((density[n - 1] as number) + (density[n] as number)) * step) / 2;
      if (n % every === 0)
        expect(shares[n / every]).toEqual(closeTo(within, { absolute: 1e-5, because: 'trapezium rule' }));
    }
  });

  it('holds all the light in the end: what lies outside a far circle is what diffraction alone puts there, 2/(π v)', () => {
    const within = energyProfile({ ...pupil, ...unit, imageRadius: 300 }, 2).shares[1] as number;
    const outside = (1 - within) * 300 * (Math.PI ** 2 / 2);
    expect(outside).toEqual(
      closeTo(1, { absolute: 0.05, because: 'the next term is smaller by the blur over the radius' }),
    );
  });
});

it('a point’s image holds all the light there is, whatever the pupil: outside a far circle 2/(π v) of it', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -3, max: 3, noNaN: true }),
      fc.double({ min: -2, max: 2, noNaN: true }),
      (defocusAberration, sphericalAberration) => {
        const given = { defocusAberration, sphericalAberration, ...unit, imageRadius: 600 };
        const { shares } = energyProfile(given, 5);
        for (const [n, share] of shares.entries()) {
          if (n > 0) expect(share).toBeGreaterThanOrEqual(shares[n - 1]! - 1e-6);
          expect(share).toBeLessThanOrEqual(1);
        }
        expect((1 - shares.at(-1)!) * 600 * (Math.PI ** 2 / 2)).toEqual(
          closeTo(1, { absolute: 0.05, because: 'the next term is smaller by the blur over the radius' }),
        );
      },
    ),
    { seed: 31, numRuns: 40 },
  );
});

describe('defocus alone', () => {
  /** Lommel's series for the light within the geometric blur and outside it, u = 4π W₀₂₀ (Born & Wolf, 8.8.1, from memory). */
  function lommelIntensity(waves: number, v: number): number {
    const u = 4 * Math.PI * waves;
    // J_n(v) for n from 0 to 200 by the trapezium rule on Bessel's integral, which needs no recurrence to be trusted.
    const bessel = (n: number) => {
      let sum = 0;
      for (let k = 0; k < 512; k++)
        sum += Math.cos((2 * Math.PI * n * k) / 512 - v * Math.sin((2 * Math.PI * k) / 512));
      return sum / 512;
    };
    const inside = v < u;
    const ratio = inside ? v / u : u / v;
    const series = (first: number) => {
      let sum = 0;
      for (let k = 0; k < 60; k++) sum += (k % 2 ? -1 : 1) * ratio ** (first + 2 * k) * bessel(first + 2 * k);
      return sum;
    };
    if (!inside) return (2 / u) ** 2 * (series(1) ** 2 + series(2) ** 2);
    const angle = (u + (v * v) / u) / 2;
    const [v0, v1] = [series(0), series(1)];
    return (2 / u) ** 2 * (1 + v0 ** 2 + v1 ** 2 - 2 * v0 * Math.cos(angle) - 2 * v1 * Math.sin(angle));
  }

  it.each([0.3, 1, 2.5, 7])('spreads a point as Lommel’s series says, %d waves out', (waves) => {
    const { radii, intensities } = pointSpreadProfile(
      { ...unit, defocusAberration: waves, sphericalAberration: 0, imageRadius: 33 },
      67,
    );
    radii.forEach((radius, n) => {
      const expected = lommelIntensity(waves, Math.PI * radius);
      expect(intensities[n], `r = ${radius}`).toEqual(
        closeTo(expected, { absolute: 1e-7, because: 'the accuracy stated' }),
      );
    });
  });

  it('lets the middle go through focus as sinc²', () => {
    for (const waves of [-3.3, -1, -0.2, 0.1, 0.7, 1.5, 12.25]) {
      const sinc = Math.sin(Math.PI * waves) / (Math.PI * waves);
      const middle = strehlRatio({ defocusAberration: waves, sphericalAberration: 0 });
      expect(middle).toEqual(closeTo(sinc ** 2, { absolute: 1e-9, because: 'the accuracy of the integral' }));
    }
  });
});
