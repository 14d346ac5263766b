import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { focusedPrescriptions, prescriptions } from '#tests/support/prescriptions.ts';
import { FaultyPrescription } from './faulty-prescription.ts';
import { imageThrough } from './image-through.ts';
import { closestOfPrescription, prescriptionInUse } from './prescription-in-use.ts';
import { prescriptionSettings } from './prescription-settings.ts';
import type { Prescription } from './prescription.ts';
import { surfacesAt } from './surfaces-at.ts';

const shares = [1e-12, 0.001, 0.07, 0.2, 0.37, 0.5, 0.66, 0.9, 1];

describe.each(focusedPrescriptions)('%s between its settings', (name) => {
  const prescription = prescriptions[name];
  const closest = closestOfPrescription(prescription);

  it.each(shares)('has the image of its subject on the sensor, as large as set: %d of the way', (share) => {
    const at = share * closest;
    const { surfaces, points } = prescriptionInUse(prescription, at);
    const subject = points.focalLength * (1 + 1 / at) - points.frontPrincipal;
    const { imageDistance, magnification } = imageThrough(surfaces, subject);
    expect(magnification).toEqual(closeTo(-at, { absolute: 1e-11, because: 'found to 1e-13; rounding' }));
    const sensor = surfaces.at(-1)!.thickness;
    expect(imageDistance).toEqual(closeTo(sensor, { absolute: 1e-8, because: 'far subjects cancel' }));
  });

  it('is what is listed at each listed setting, but for its sensor in the focus of infinity', () => {
    const { stated, traced, shift } = prescriptionSettings(prescription);
    stated.forEach((at, place) => {
      const { surfaces } = prescriptionInUse(prescription, traced[place]!);
      const listed = surfacesAt(prescription, at);
      expect(surfaces.slice(0, -1)).toEqual(listed.slice(0, -1));
      expect(surfaces.at(-1)!.thickness).toBe(listed.at(-1)!.thickness + shift);
    });
  });

  it('has no gap wider or narrower than at the settings on either side', () => {
    const { stated, traced } = prescriptionSettings(prescription);
    for (const share of shares) {
      const { surfaces } = prescriptionInUse(prescription, share * closest);
      const right = Math.max(
        1,
        traced.findIndex((here) => share * closest <= here),
      );
      const ends = [right - 1, right].map((place) => surfacesAt(prescription, stated[place]!));
      surfaces.slice(0, -1).forEach(({ thickness }, index) => {
        const [one, other] = ends.map((end) => end[index]!.thickness) as [number, number];
        expect(thickness).toBeGreaterThanOrEqual(Math.min(one, other) - 1e-9);
        expect(thickness).toBeLessThanOrEqual(Math.max(one, other) + 1e-9);
      });
    }
  });
});

describe('prescriptionInUse', () => {
  const macro = prescriptions['macro-200-us-5751485'];

  it('answers a setting that was asked for before with the same answer, and forgets what is long ago', () => {
    const first = prescriptionInUse(macro, 0.31);
    expect(prescriptionInUse(macro, 0.31)).toBe(first);
    for (let step = 0; step < 300; step++) prescriptionInUse(macro, 0.4 + step / 1000);
    const again = prescriptionInUse(macro, 0.31);
    expect(again).not.toBe(first);
    expect(again).toEqual(first);
  });

  it('moves a lens without settings as a whole, f m₀ away from its sensor', () => {
    const triplet = prescriptions['triplet-50'];
    const [far, near] = [prescriptionInUse(triplet, 0), prescriptionInUse(triplet, 0.4)];
    const moved = near.surfaces.at(-1)!.thickness - far.surfaces.at(-1)!.thickness;
    expect(moved).toEqual(closeTo(0.4 * far.points.focalLength, { relative: 1e-13, because: 'rounding' }));
    expect(near.points).toEqual(far.points);
    expect(closestOfPrescription(triplet)).toBe(0);
  });

  it('refuses settings that it does not reach, by name', () => {
    for (const at of [NaN, -0.1, 1.01, Infinity]) {
      expect(() => prescriptionInUse(macro, at), `${at}`).toThrow(OutOfRange);
      expect(() => prescriptionInUse(macro, at), `${at}`).toThrow(/focus-magnification is/);
    }
    expect(() => prescriptionInUse(prescriptions['triplet-50'], Infinity)).toThrow(/focus-magnification is Infinity/);
  });

  it('refuses settings whose spacings do not go nearer', () => {
    const still: Prescription = {
      ...macro,
      settings: [macro.settings![0]!, { ...macro.settings![0]!, focusMagnification: 0.02 }],
    };
    expect(() => prescriptionInUse(still, 0)).toThrow(FaultyPrescription);
    expect(() => prescriptionInUse(still, 0)).toThrow(/more than in the setting before/);
  });
});
