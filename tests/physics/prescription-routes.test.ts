import { describe, expect, it } from 'vitest';
import { cardinalPoints } from '#core/rig/cardinal-points.ts';
import { exactRay, heightAt } from '#core/rig/exact-trace.ts';
import { glassPoints, glassPupils } from '#core/rig/paraxial-trace.ts';
import { surfacesAt, type Surface } from '#core/rig/prescription.ts';
import type { Element, Rig } from '#core/rig/rig.ts';
import { solveRig } from '#core/rig/solve.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { prescriptionNames, prescriptions } from '#tests/support/prescriptions.ts';

/** A rig whose parts are single surfaces: gaps reduced by the index they are filled with, every power (n' − n)/r. */
function chainOfSurfaces(surfaces: readonly Surface[], stop: number, moreExtension: number): Rig {
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
  // The stop stands just before its surface: a thing of its own without power, 5 mm in radius.
  const plane: Element = { ...elements[stop]!, gap: 0, power: 0, exitRadius: 5, part: surfaces.length };
  const towardsSubject = [...elements.slice(0, stop), plane, ...elements.slice(stop)].reverse();
  const length = elements.reduce((sum, { gap }) => sum + gap, 0);
  const camera = { part: 'camera', registerDistance: 44, sensorWidth: 36, sensorHeight: 24 } as const;
  return { places: [], parts: [camera], camera, elements: towardsSubject, frontGap: 0, length };
}

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
