import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assembleRig } from '#core/rig/assemble.ts';
import { cardinalPoints } from '#core/rig/cardinal-points.ts';
import { exactRay, heightAt } from '#core/rig/exact-trace.ts';
import { closestMagnification } from '#core/rig/lens-in-use.ts';
import { lensOfPrescription } from '#core/rig/lens-of-prescription.ts';
import { glassPoints, glassPupils } from '#core/rig/paraxial-trace.ts';
import { prescriptionInUse } from '#core/rig/prescription-in-use.ts';
import type { Surface } from '#core/rig/prescription.ts';
import { surfacesAt } from '#core/rig/surfaces-at.ts';
import type { Element, Rig } from '#core/rig/rig.ts';
import { solveRig } from '#core/rig/solve.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { focusedPrescriptions, prescriptionNames, prescriptions } from '#tests/support/prescriptions.ts';
import { valueIn } from '#tests/support/sample.ts';

/** A rig whose parts are single surfaces: gaps reduced by the index they are filled with, every power (n' − n)/r. As long as they are. */
function chainOfSurfaces(surfaces: readonly Surface[], stop: number, moreExtension: number, stopRadius = 5): Rig {
  const elements = surfaces.map((surface, index): Element => {
    const before = surfaces[index - 1]?.index ?? 1;
    const behind = surfaces[index + 1] ? surface.thickness / surface.index : surface.thickness + moreExtension;
    return {
      gap: behind,
      power: (surface.index - before) / surface.radius,
      separation: 0,
      exitRadius: Infinity,
      exitDepth: 0,
      fNumber: 0,
      part: index,
      control: 'fixed',
    };
  });
  // The stop stands just before its surface: a thing of its own without power.
  const plane: Element = { ...elements[stop]!, gap: 0, power: 0, exitRadius: stopRadius, part: surfaces.length };
  const towardsSubject = [...elements.slice(0, stop), plane, ...elements.slice(stop)].reverse();
  const length = surfaces.reduce((sum, { thickness }) => sum + thickness, moreExtension);
  const camera = { part: 'camera', registerDistance: 44, sensorWidth: 36, sensorHeight: 24 } as const;
  return { places: [], parts: [camera], camera, elements: towardsSubject, frontGap: 0, length };
}

describe.each(focusedPrescriptions)('%s on a camera, between its settings', (name) => {
  const prescription = prescriptions[name];
  const registerDistance = 20;
  const lens = lensOfPrescription(prescription, { registerDistance, apertureControl: 'lens' });
  const camera = { part: 'camera', registerDistance, sensorWidth: 36, sensorHeight: 24 } as const;
  const stopDiameter = lens.focalLength / 8 / prescriptionInUse(prescription, 0).pupils.entranceOverStop;

  it('is what a chain of its surfaces is there: magnification, distance, cone and pupils', () => {
    fc.assert(
      fc.property(valueIn([0.01, 1]), (share) => {
        const at = share * closestMagnification(lens);
        const { surfaces } = prescriptionInUse(prescription, at);
        const byLens = solveRig(assembleRig([camera, { part: 'lens', lens, focusMagnification: at, fNumber: 8 }]));
        const bySurfaces = solveRig(chainOfSurfaces(surfaces, prescription.stop, 0, stopDiameter / 2));
        if (!('pupil' in byLens && 'pupil' in bySurfaces)) throw new Error(byLens.sharpPlane);
        const rounding = { relative: 1e-9, because: 'a setting found to 1e-13, and long distances that cancel' };
        expect(bySurfaces.magnification).toEqual(closeTo(at, rounding));
        for (const known of ['magnification', 'workingDistance', 'focusDistance', 'effectiveFNumber'] as const) {
          expect(byLens[known], known).toEqual(closeTo(bySurfaces[known], rounding));
        }
        const { entrancePupil = NaN, entrancePupilDistance = NaN } = bySurfaces.pupil ?? {};
        expect(byLens.pupil?.entrancePupil).toEqual(closeTo(entrancePupil, rounding));
        expect(byLens.pupil?.entrancePupilDistance).toEqual(closeTo(entrancePupilDistance, rounding));
      }),
      { seed: 95, numRuns: 60 },
    );
  });
});

const cases = prescriptionNames.flatMap((name) => {
  const prescription = prescriptions[name];
  const settings = prescription.settings?.map(({ focusMagnification }) => focusMagnification) ?? [0];
  return settings.map((at) => [`${name} at ${at}`, surfacesAt(prescription, at), prescription.stop] as const);
});

describe.each(cases)('%s', (_, surfaces, stop) => {
  const points = glassPoints(surfaces);
  const pupils = glassPupils(surfaces, stop);
  // The picture at a fifth of life size, whatever the lens.
  const magnification = 0.2;
  const moreExtension = points.backFocus + magnification * points.focalLength - surfaces.at(-1)!.thickness;
  const rig = chainOfSurfaces(surfaces, stop, moreExtension);
  const rounding = { relative: 1e-10, because: 'a dozen surfaces in the other order' };

  it('has the same cardinal points as a chain of its surfaces', () => {
    const chain = cardinalPoints(rig);
    expect(chain?.focalLength).toEqual(closeTo(points.focalLength, rounding));
    expect(chain?.frontPrincipalDepth).toEqual(closeTo(points.frontPrincipal, rounding));
    const imageDistance = points.focalLength * (1 + magnification);
    expect(chain?.imageDistance).toEqual(closeTo(imageDistance, rounding));
  });

  it('has the same pupils, magnification and cone as a chain of its surfaces', () => {
    const solved = solveRig(rig);
    if (!('pupil' in solved)) throw new Error(solved.sharpPlane);
    const { focalLength } = points;
    expect(solved.magnification).toEqual(closeTo(magnification, rounding));
    const subject = focalLength * (1 + 1 / magnification) - points.frontPrincipal;
    expect(solved.workingDistance).toEqual(closeTo(subject, rounding));
    const entrancePupil = 10 * pupils.entranceOverStop;
    expect(solved.pupil?.entrancePupil).toEqual(closeTo(entrancePupil, rounding));
    expect(solved.pupil?.entrancePupilDistance).toEqual(closeTo(subject + pupils.entrancePosition, rounding));
    const effective = (focalLength / entrancePupil) * (1 + magnification / pupils.pupilMagnification);
    expect(solved.effectiveFNumber).toEqual(closeTo(effective, rounding));
  });

  it('traces exactly what paraxial rays say, close to the axis, and departs with the cube of the height', () => {
    const focus = points.track + points.backFocus;
    const scale = points.focalLength / 100;
    const miss = (height: number) => heightAt(exactRay(surfaces, { z: -1, y: height * scale }, 0), focus) / scale;
    expect(miss(1e-3)).toEqual(closeTo(0, { absolute: 1e-9, because: 'a thousandth of a mm, cubed, is 1e-9' }));
    const [near, far] = [miss(0.5), miss(1)];
    expect(Math.abs(far)).toBeGreaterThan(1e-6);
    expect(far / near).toEqual(closeTo(8, { relative: 0.1, because: 'the fifth order is left' }));
  });
});
