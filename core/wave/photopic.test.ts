import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { tableRange, towardsY } from '#core/light/cie-1931.ts';
import { opticalTransfer, transferAt } from './optical-transfer.ts';
import { inLight, photopicLight, photopicPeak } from './photopic-light.ts';
import { photopicEnergyProfile, photopicProfile } from './photopic-spread.ts';
import { photopicTransfer } from './photopic-transfer.ts';
import { intensitiesUpTo } from './point-spread.ts';

const inFocus = { effectiveFNumber: 16, defocusAberration: 0, sphericalAberration: 0 };

describe('photopicLight', () => {
  it('shares out one whole of light', () => {
    const whole = photopicLight.reduce((sum, { share }) => sum + share, 0);
    expect(whole).toEqual(closeTo(1, { absolute: 1e-15, because: 'rounding' }));
  });

  it('counts one path in whatever wavelength', () => {
    const pupil = { defocusAberration: 1, sphericalAberration: -2 };
    const halved = inLight(pupil, 2 * photopicPeak);
    expect(halved).toEqual({ defocusAberration: 0.5, sphericalAberration: -1 });
  });
});

describe('photopicTransfer', () => {
  it('is 45 % at 50 line pairs per millimetre, in focus at an effective f/16', () => {
    const white = photopicTransfer({ ...inFocus, spatialFrequency: 50 });
    expect(white).toEqual(closeTo(0.449, { absolute: 0.001, because: '33 wavelengths stand for all' }));
  });

  it('is near that of 560 nm, the mean, for coarse patterns', () => {
    const white = photopicTransfer({ ...inFocus, spatialFrequency: 20 });
    const green = opticalTransfer({ ...inFocus, spatialFrequency: 20, cutoffFrequency: 1 / (0.00056 * 16) });
    expect(white).toEqual(closeTo(green, { absolute: 1e-3, because: 'the transfer is nearly straight in λ there' }));
  });

  it('passes a little where green light passes nothing, and nothing beyond the bluest', () => {
    const green = 1 / (0.00055 * 16);
    expect(photopicTransfer({ ...inFocus, spatialFrequency: green })).toBeGreaterThan(0);
    expect(photopicTransfer({ ...inFocus, spatialFrequency: 1 / (0.0004 * 16) })).toBe(0);
  });

  it('refuses a frequency below zero by name', () => {
    expect(() => photopicTransfer({ ...inFocus, spatialFrequency: -1 })).toThrow(/spatial-frequency is -1/);
  });
});

describe('white light with many waves of aberration', () => {
  /** V(λ) in steps of 1 nm, straight between its values. */
  const closest = Array.from({ length: 401 }, (_, step) => {
    const place = step / tableRange.step;
    const row = Math.min(towardsY.length - 2, Math.floor(place));
    const weight = towardsY[row]! + (place - row) * (towardsY[row + 1]! - towardsY[row]!);
    return { wavelength: (tableRange.first + step) / 1e6, weight };
  });
  const whole = closest.reduce((sum, { weight }) => sum + weight, 0);
  const perfect = closest.reduce((sum, { weight, wavelength }) => sum + weight / wavelength ** 2, 0);

  it.each([
    [0.5, 0.3, 0.5],
    // f/16, 104.5 line pairs: the worst of some thousands for steps of 30 nm.
    [2, 1.9, 104.5 * 16 * photopicPeak],
    [-3.2, 0.8, 0.35],
    [10, 0, 0.11],
    [60, -19, 0.03],
    [4, 0, 0.31],
    [12, -6, 0.75],
    [25.26, -18.29, 0.566],
    [3, -19.6, 0.2],
    [-190, 5, 0.01],
  ])(
    'is that of the whole table: %d of defocus, %d of spherical aberration',
    (defocusAberration, sphericalAberration, s) => {
      const pupil = { defocusAberration, sphericalAberration };
      const effectiveFNumber = 16;
      const spatialFrequency = s / (photopicPeak * effectiveFNumber);
      const transfer = closest.reduce(
        (sum, { wavelength, weight }) =>
          sum +
          (weight / whole) * transferAt(inLight(pupil, wavelength), spatialFrequency * wavelength * effectiveFNumber),
        0,
      );
      expect(photopicTransfer({ ...pupil, effectiveFNumber, spatialFrequency })).toEqual(
        closeTo(transfer, { absolute: 1e-4, because: 'stated' }),
      );
      const middle = closest.reduce(
        (sum, { wavelength, weight }) =>
          sum + ((weight / wavelength ** 2) * intensitiesUpTo(inLight(pupil, wavelength), 0, 1)[0]!) / perfect,
        0,
      );
      expect(photopicProfile({ ...pupil, effectiveFNumber, imageRadius: 0.01 }, 2).intensities[0]).toEqual(
        closeTo(middle, { absolute: 1e-4, because: 'stated' }),
      );
    },
  );
});

describe('white light as the aberrations grow', () => {
  it.each([1, 4, 9, 33])('takes no step at %d waves', (waves) => {
    const at = (sum: number) =>
      [0.1, 0.4, 0.9].map((s) =>
        photopicTransfer({
          effectiveFNumber: 16,
          spatialFrequency: s / (photopicPeak * 16),
          defocusAberration: 0.6 * sum,
          sphericalAberration: 0.4 * sum,
        }),
      );
    const below = at(waves - 1e-7);
    expect(at(waves + 1e-7)).toEqual(
      below.map((value) => closeTo(value, { absolute: 5e-6, because: 'the slope is at most 8π a wave' })),
    );
  });
});

describe('photopicProfile and photopicEnergyProfile', () => {
  it('start at one and at nothing in focus', () => {
    const middle = photopicProfile({ ...inFocus, imageRadius: 0.05 }, 3).intensities[0];
    expect(middle).toEqual(closeTo(1, { absolute: 1e-7, because: 'accuracy of the point spread' }));
    expect(photopicEnergyProfile({ ...inFocus, imageRadius: 0.05 }, 3).shares[0]).toBe(0);
  });

  it('have no dark ring: each colour’s falls elsewhere', () => {
    const { intensities } = photopicProfile({ ...inFocus, imageRadius: 0.02 }, 400);
    expect(Math.min(...intensities)).toBeGreaterThan(1e-4);
  });

  it('let the energy be the profile summed over rings', () => {
    const given = { effectiveFNumber: 16, defocusAberration: 1, sphericalAberration: -0.3, imageRadius: 0.2 };
    const { radii, intensities } = photopicProfile(given, 2001);
    const { shares } = photopicEnergyProfile(given, 5);
    const step = radii[1] as number;
    const within = (last: number) =>
      intensities.slice(0, last).reduce((sum, intensity, n) => sum + intensity * (radii[n] as number), 0) * step +
      ((intensities[last] as number) * (radii[last] as number) * step) / 2;
    for (const quarter of [1, 2, 3]) {
      const expected = within(500 * quarter) / within(2000);
      const ours = (shares[quarter] as number) / (shares[4] as number);
      expect(ours).toEqual(closeTo(expected, { absolute: 1e-4, because: 'trapezium rule of 2000 steps' }));
    }
  });

  it('refuse a radius below zero and a count that is none', () => {
    expect(() => photopicProfile({ ...inFocus, imageRadius: -1 }, 3)).toThrow(OutOfRange);
    expect(() => photopicEnergyProfile({ ...inFocus, imageRadius: 1 }, 1)).toThrow(/number of samples/);
  });
});
