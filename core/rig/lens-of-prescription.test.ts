import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { prescriptions } from '#tests/support/prescriptions.ts';
import { FaultyPrescription } from './faulty-prescription.ts';
import { closestMagnification, stateAt } from './lens-in-use.ts';
import { lensOfPrescription } from './lens-of-prescription.ts';
import { glassPoints } from './paraxial-trace.ts';
import { prescriptionInUse } from './prescription-in-use.ts';
import type { Prescription } from './prescription.ts';
import { reversedPrescription } from './reversed-prescription.ts';
import { assembleRig } from './assemble.ts';
import { solveRig } from './solve.ts';

const mount = { registerDistance: 30, apertureControl: 'camera' } as const;
const macro = prescriptions['macro-60-us-5751485'];

describe('lensOfPrescription', () => {
  it('is 60 mm at infinity and 49.4 mm at life size for the macro lens of a patent', () => {
    const lens = lensOfPrescription(macro, mount);
    expect(lens.focalLength).toEqual(closeTo(59.9998, { absolute: 5e-5, because: 'printed to four decimals' }));
    expect(closestMagnification(lens)).toEqual(closeTo(1, { absolute: 1e-5, because: 'spacings of five decimals' }));
    const close = stateAt(lens, closestMagnification(lens));
    expect(close.focalLength).toEqual(closeTo(49.42733, { absolute: 1e-5, because: 'computed to five decimals' }));
  });

  it('has 1/f move evenly with m₀ in that lens, within 0.004 %: what is assumed where only two numbers are known', () => {
    const lens = lensOfPrescription(macro, mount);
    const [far, near] = [stateAt(lens, 0).focalLength, stateAt(lens, closestMagnification(lens)).focalLength];
    const evenly = 2 / (1 / far + 1 / near);
    expect(stateAt(lens, 0.5).focalLength).toEqual(closeTo(evenly, { relative: 4e-5, because: 'stated' }));
  });

  it('lets f/D drift from the marked f-number while the iris keeps its diameter', () => {
    const lens = lensOfPrescription(macro, mount);
    expect(stateAt(lens, 0).fNumberDrift).toBe(1);
    // N_w 4.88179 at life size and 2.82 marked, with P 0.807841 there.
    const drift = 4.88179 / 2.82 / (1 + 1 / 0.807841);
    const close = stateAt(lens, closestMagnification(lens));
    expect(close.fNumberDrift).toEqual(
      closeTo(drift, { relative: 1e-4, because: 'f/2.82 is printed to three figures' }),
    );
  });

  it('is between settings what the surfaces themselves say there', () => {
    const lens = lensOfPrescription(macro, mount);
    const { surfaces } = prescriptionInUse(macro, 0.3);
    const { focalLength, frontPrincipal } = glassPoints(surfaces);
    expect(stateAt(lens, 0.3)).toMatchObject({ focalLength, frontPrincipalDepth: frontPrincipal });
    expect(lens.prescription).toBe(macro);
    expect(lens.focusing).toEqual({ by: 'prescription' });
  });

  it('is focused as a whole where it has one setting only', () => {
    const lens = lensOfPrescription(prescriptions['triplet-50'], { ...mount, closestMagnification: 0.2 });
    expect(lens.focusing).toEqual({ by: 'unit', closestMagnification: 0.2 });
    expect(closestMagnification(lensOfPrescription(prescriptions['triplet-50'], mount))).toBe(0);
  });

  it('has its last surface stand out behind a flange that lies before it: the foremost when it is turned round', () => {
    // The last vertex is 39.384 mm before the sensor, so 7.12 behind a flange at 46.5.
    const lens = lensOfPrescription(macro, { registerDistance: 46.5, apertureControl: 'lens' });
    expect(lens.rearProtrusion).toEqual(closeTo(7.116, { absolute: 1e-3, because: 'printed to three decimals' }));
    expect(lensOfPrescription(macro, mount).rearProtrusion).toBe(0);

    const ring = 100;
    const camera = { part: 'camera', registerDistance: 46.5, sensorWidth: 36, sensorHeight: 24 } as const;
    const solved = solveRig(
      assembleRig([
        camera,
        { part: 'ring', extension: ring },
        { part: 'lens', lens, focusMagnification: 0, fNumber: 8, reversed: true },
      ]),
    );
    if (solved.sharpPlane !== 'in front') throw new Error(solved.sharpPlane);
    // The other way: the surfaces in the opposite order, their first vertex as far from the sensor as the rim has come.
    const turned = glassPoints(reversedPrescription({ surfaces: macro.surfaces, stop: macro.stop }).surfaces);
    const imageDistance = 46.5 + ring - turned.rearPrincipal;
    const m = imageDistance / turned.focalLength - 1;
    const toGlass = turned.focalLength * (1 + 1 / m) - turned.frontPrincipal;
    expect(solved.magnification).toEqual(closeTo(m, { relative: 1e-9, because: 'two routes' }));
    expect(solved.workingDistance).toEqual(closeTo(toGlass, { absolute: 1e-4, because: 'a printed back focus' }));
  });

  it('refuses a setting whose spacings say otherwise, with the surface before the sensor and what they say', () => {
    const still = { ...macro, settings: [macro.settings![0]!, { focusMagnification: 1, thickness: {} }] };
    const focusedNear = {
      ...macro,
      surfaces: macro.surfaces.map((surface, at) =>
        at < macro.surfaces.length - 1 ? surface : { ...surface, thickness: 30 },
      ),
      settings: [],
    };
    for (const [contradiction, words] of [
      [still, /the setting for 1 has the sensor the focus magnification is \S+; accepted/],
      [{ ...focusedNear, settings: undefined }, /the setting for 0 has the sensor the focus magnification is -0\.1/],
    ] as const) {
      const attempt = () => lensOfPrescription(contradiction as Prescription, mount);
      expect(attempt).toThrow(FaultyPrescription);
      expect(attempt).toThrow(words);
      expect(attempt).toThrow(expect.objectContaining({ surface: macro.surfaces.length - 1 }));
    }
  });

  it('refuses what is no lens, and one that forms no picture, by name', () => {
    expect(() => lensOfPrescription({ surfaces: [], stop: 0 }, mount)).toThrow(FaultyPrescription);
    const spreading = {
      surfaces: [
        { radius: -50, thickness: 2, index: 1.5 },
        { radius: 50, thickness: 40, index: 1 },
      ],
      stop: 0,
    };
    expect(() => lensOfPrescription(spreading, mount)).toThrow(OutOfRange);
    expect(() => lensOfPrescription(spreading, mount)).toThrow(/focal-length is -4/);
  });
});
