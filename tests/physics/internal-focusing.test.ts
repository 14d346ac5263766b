import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closeFocusFocalLength } from '#core/gaussian/close-focus-focal-length.formula.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import { focusMagnificationFor, focusRange } from '#core/rig/focusing.ts';
import { lensOfPrescription } from '#core/rig/lens-of-prescription.ts';
import { lensInUse } from '#core/rig/lens-in-use.ts';
import type { InternalFocusing, Lens } from '#core/rig/lens.ts';
import type { Part } from '#core/rig/part.ts';
import { reversedPrescription } from '#core/rig/reversed-prescription.ts';
import { glassPoints } from '#core/rig/paraxial-trace.ts';
import { solveRig } from '#core/rig/solve.ts';
import type { SharpRig } from '#core/rig/solved-rig.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { prescriptionNames, prescriptions } from '#tests/support/prescriptions.ts';
import { camera, on, ring } from '#tests/support/rig-parts.ts';
import { valueIn } from '#tests/support/sample.ts';

function sharp(parts: readonly Part[]): SharpRig {
  const solved = solveRig(assembleRig(parts));
  if (!('workingDistance' in solved)) throw new Error(solved.sharpPlane);
  return solved;
}

const keeping = (keeps: InternalFocusing['keeps']): Lens => ({
  focalLength: 90,
  principalSeparation: 0,
  frontPrincipalDepth: 60,
  pupilMagnification: 0.8,
  registerDistance: 44,
  focusing: { by: 'internal', closestMagnification: 1, closestFocusDistance: 290, keeps },
  apertureControl: 'camera',
});
const exact = { relative: 1e-11, because: 'rounding' };

describe('a lens known by its closest distance and its magnification there', () => {
  it('is solved back to just these two numbers', () => {
    const { farthest, closest } = focusRange([camera, on(keeping('f-number'))]);
    expect(farthest.sharpPlane).toBe('at infinity');
    expect(closest).toMatchObject({ magnification: expect.closeTo(1, 12), focusDistance: expect.closeTo(290, 9) });
  });

  it('keeps its front where it is: working distance and focus distance shrink together', () => {
    const lens = keeping('f-number');
    const [near, far] = [sharp([camera, on(lens, { at: 0.8 })]), sharp([camera, on(lens, { at: 0.3 })])];
    const front = near.focusDistance - near.workingDistance;
    expect(far.focusDistance - far.workingDistance).toEqual(closeTo(front, exact));
  });

  it('is given more by a ring than its engraved focal length promises', () => {
    const close = closeFocusFocalLength({ focusDistance: 290, magnification: 1, principalSeparation: 0 });
    const solved = sharp([camera, ring(25), on(keeping('f-number'), { at: 1 })]);
    expect(solved.magnification).toEqual(closeTo(1 + 25 / close, exact));
    expect(solved.magnification).toBeGreaterThan(1 + 25 / 90);
  });

  it('loses 0.62 stop more or less, by what is assumed to be kept', () => {
    const loss = (keeps: InternalFocusing['keeps']) => sharp([camera, on(keeping(keeps), { at: 1 })]).lightLoss ?? NaN;
    const apart = loss('f-number') - loss('entrance-pupil');
    expect(apart).toEqual(closeTo(2 * Math.log2(90 / 72.5), { absolute: 1e-11, because: 'rounding' }));
    expect(loss('f-number')).toEqual(closeTo(2 * Math.log2(1 + 1 / 0.8), exact));
  });

  it('is focused back to any magnification of its range, with or without a ring', () => {
    fc.assert(
      fc.property(valueIn([0.01, 0.99]), valueIn([0, 40]), (at, e) => {
        const parts = [camera, ring(e), on(keeping('entrance-pupil'), { at })];
        const { magnification } = sharp(parts);
        const setting = focusMagnificationFor([camera, ring(e), on(keeping('entrance-pupil'))], 2, magnification);
        expect(setting).toEqual(closeTo(at, { relative: 1e-9, because: 'halving ends at 1e-13 of the range' }));
      }),
      { seed: 61, numRuns: 100 },
    );
  });
});

describe('the macro lens of a patent', () => {
  const lens = lensOfPrescription(prescriptions['macro-60-us-5751485'], {
    registerDistance: 20,
    apertureControl: 'camera',
  });
  const onCamera = [{ ...camera, registerDistance: 20 } as Part, on(lens, { fNumber: 2.82 })];

  it('reaches from infinity to life size, 219 mm from its sensor', () => {
    const { farthest, closest } = focusRange(onCamera);
    expect(farthest).toMatchObject({ sharpPlane: 'at infinity', effectiveFNumber: expect.closeTo(2.82, 12) });
    expect(closest).toMatchObject({ focusDistance: expect.closeTo(218.87966, 3) });
  });

  it('is slower close up than the marked number, but by less than N (1 + m) says', () => {
    const { closest } = focusRange(onCamera);
    expect(closest).toMatchObject({ effectiveFNumber: expect.closeTo(4.88179, 3) });
  });
});

describe.each(prescriptionNames.filter((name) => name !== 'macro-60-us-5751485'))('%s turned round', (name) => {
  it('is the same whether its surfaces are turned or the lens made of them', () => {
    const forwards = prescriptions[name];
    const points = glassPoints(forwards.surfaces);
    // The mount's flange in the plane of the last vertex, the front rim in that of the first.
    const lens = lensOfPrescription(forwards, { registerDistance: points.backFocus, apertureControl: 'lens' });
    const turned = reversedPrescription(forwards);
    const extension = 3 * points.focalLength;
    const byLens = sharp([camera, ring(extension), on(lens, { fNumber: 5, reversed: true })]);

    const reversed = glassPoints(turned.surfaces);
    const withSensor = {
      ...turned,
      surfaces: turned.surfaces.map((surface, index) =>
        index === turned.surfaces.length - 1 ? { ...surface, thickness: reversed.backFocus } : surface,
      ),
    };
    const marked = 5 / lensInUse(lens, 0, 5).pupilMagnification;
    // Its flange half way along, for a back focus may be negative; the camera's register takes up the difference.
    const registerDistance = (reversed.track + reversed.backFocus) / 2;
    const bySurfaces = sharp([
      { ...camera, registerDistance: 44 - reversed.backFocus + registerDistance } as Part,
      ring(extension),
      on(lensOfPrescription(withSensor, { registerDistance, apertureControl: 'lens' }), { fNumber: marked }),
    ]);
    const cancels = { relative: 1e-9, because: 'long distances cancel' };
    expect(bySurfaces.magnification).toEqual(closeTo(byLens.magnification, cancels));
    expect(bySurfaces.effectiveFNumber).toEqual(closeTo(byLens.effectiveFNumber, cancels));
    expect(bySurfaces.pupil?.entrancePupilDistance).toEqual(
      closeTo(byLens.pupil?.entrancePupilDistance ?? NaN, cancels),
    );
  });
});
