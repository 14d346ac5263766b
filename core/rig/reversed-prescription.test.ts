import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { prescriptionNames, prescriptions } from '#tests/support/prescriptions.ts';
import { FaultyPrescription, requirePrescription } from './faulty-prescription.ts';
import { glassPoints, glassPupils } from './paraxial-trace.ts';
import { reversedPrescription } from './reversed-prescription.ts';

const rounding = { relative: 1e-9, because: 'long distances cancel' };

describe.each(prescriptionNames)('%s turned round', (name) => {
  const lens = prescriptions[name];
  const turned = reversedPrescription(lens);

  it('is a lens', () => expect(requirePrescription(turned)).toBe(turned));

  it('keeps its focal length and exchanges its principal planes', () => {
    const [before, after] = [glassPoints(lens.surfaces), glassPoints(turned.surfaces)];
    expect(after.focalLength).toEqual(closeTo(before.focalLength, rounding));
    expect(after.frontPrincipal).toEqual(closeTo(-before.rearPrincipal, rounding));
    expect(after.rearPrincipal).toEqual(closeTo(-before.frontPrincipal, rounding));
    expect(after.principalSeparation).toEqual(closeTo(before.principalSeparation, { ...rounding, relative: 1e-8 }));
  });

  it('turns its pupil magnification upside down, its pupils keeping their places in the glass', () => {
    const [before, after] = [glassPupils(lens.surfaces, lens.stop), glassPupils(turned.surfaces, turned.stop)];
    expect(after.pupilMagnification).toEqual(closeTo(1 / before.pupilMagnification, rounding));
    expect(after.entrancePosition).toEqual(closeTo(-before.exitPosition, rounding));
    expect(after.exitPosition).toEqual(closeTo(-before.entrancePosition, rounding));
  });

  it('is the lens again when turned twice', () => {
    const twice = reversedPrescription(turned);
    const [before, after] = [glassPupils(lens.surfaces, lens.stop), glassPupils(twice.surfaces, twice.stop)];
    expect(after.pupilMagnification).toEqual(closeTo(before.pupilMagnification, rounding));
    expect(glassPoints(twice.surfaces).backFocus).toEqual(closeTo(glassPoints(lens.surfaces).backFocus, rounding));
  });
});

describe('reversedPrescription', () => {
  it('carries clear apertures along with their surfaces', () => {
    const { surfaces } = reversedPrescription({
      surfaces: [
        { radius: 50, thickness: 5, index: 1.5, clearAperture: 20 },
        { radius: -80, thickness: 45, index: 1 },
      ],
      stop: 0,
    });
    expect(surfaces).toEqual([
      { radius: 80, thickness: 5, index: 1.5 },
      { radius: -50, thickness: 0, index: 1, clearAperture: 20 },
      { radius: Infinity, thickness: 0, index: 1 },
    ]);
  });
});

it('refuses what no lens can have', () => {
  const lens = prescriptions['triplet-50'];
  expect(() => reversedPrescription({ ...lens, stop: NaN })).toThrow(/the stop is at surface NaN/);
  expect(() =>
    reversedPrescription({ ...lens, surfaces: lens.surfaces.with(0, { ...lens.surfaces[0]!, radius: NaN }) }),
  ).toThrow(FaultyPrescription);
});
