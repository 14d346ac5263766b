import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { magnificationFromExtension } from '#core/gaussian/magnification-from-extension.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistance } from '#core/gaussian/working-distance.formula.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import { converterFactorWithRingBehind } from '#core/rig/converter-factor-with-ring-behind.formula.ts';
import { effectiveFNumberOfCoupledLenses } from '#core/rig/effective-f-number-of-coupled-lenses.formula.ts';
import { effectiveFNumberOfObjectiveOnLens } from '#core/rig/effective-f-number-of-objective-on-lens.formula.ts';
import { effectiveFNumberOfObjective } from '#core/rig/effective-f-number-of-objective.formula.ts';
import { effectiveFNumberOfReversedLens } from '#core/rig/effective-f-number-of-reversed-lens.formula.ts';
import { effectiveFNumberWithCloseUpLens } from '#core/rig/effective-f-number-with-close-up-lens.formula.ts';
import { effectiveFNumberWithConverter } from '#core/rig/effective-f-number-with-converter.formula.ts';
import { entrancePupilDistanceOfReversedLens } from '#core/rig/entrance-pupil-distance-of-reversed-lens.formula.ts';
import { entrancePupilOfReversedLens } from '#core/rig/entrance-pupil-of-reversed-lens.formula.ts';
import type { Lens } from '#core/rig/lens.ts';
import { magnificationOfCloseUpLens } from '#core/rig/magnification-of-close-up-lens.formula.ts';
import { magnificationOfCoupledLenses } from '#core/rig/magnification-of-coupled-lenses.formula.ts';
import { magnificationOfInfinityObjective } from '#core/rig/magnification-of-infinity-objective.formula.ts';
import { magnificationOfReversedLens } from '#core/rig/magnification-of-reversed-lens.formula.ts';
import { magnificationWithCloseUpLens } from '#core/rig/magnification-with-close-up-lens.formula.ts';
import { magnificationWithConverter } from '#core/rig/magnification-with-converter.formula.ts';
import { magnificationWithRingBehindConverter } from '#core/rig/magnification-with-ring-behind-converter.formula.ts';
import { magnificationWithRingsAroundConverter } from '#core/rig/magnification-with-rings-around-converter.formula.ts';
import type { Part } from '#core/rig/part.ts';
import { solveRig } from '#core/rig/solve.ts';
import type { SharpRig } from '#core/rig/solved-rig.ts';
import { workingDistanceOfCloseUpLens } from '#core/rig/working-distance-of-close-up-lens.formula.ts';
import { workingDistanceOfReversedLens } from '#core/rig/working-distance-of-reversed-lens.formula.ts';
import { workingDistanceWithConverter } from '#core/rig/working-distance-with-converter.formula.ts';
import { workingDistanceWithCloseUpLens } from '#core/rig/working-distance-with-close-up-lens.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { on, ring, unitLenses } from '#tests/support/rig-parts.ts';
import { valueIn } from '#tests/support/sample.ts';

const cancels = { relative: 1e-10, because: 'distances a hundred times as long cancel in the engine' };

/** Each lens on a camera of its own register, marked N and focused to m₀, with one more length and two more numbers above 0. */
function everyLens(law: (lens: Lens, camera: Part, more: { N: number; at: number; e: number; x: number }) => void) {
  const more = fc.record({ N: valueIn([1, 32]), at: valueIn([0.01, 1]), e: valueIn([1, 200]), x: valueIn([0.05, 1]) });
  const test = (lens: Lens, given: { N: number; at: number; e: number; x: number }) => {
    const { registerDistance } = lens;
    law(lens, { part: 'camera', registerDistance, sensorWidth: 36, sensorHeight: 24 }, given);
  };
  fc.assert(fc.property(unitLenses, more, test), { seed: 21, numRuns: 400 });
}

function sharp(...parts: Part[]): SharpRig {
  const solved = solveRig(assembleRig(parts));
  if (solved.sharpPlane !== 'in front' && solved.sharpPlane !== 'inside') throw new Error(solved.sharpPlane);
  return solved;
}

/** A length that the engine finds as a difference of distances as long as *scale*. */
const near = (length: number, scale: number) =>
  closeTo(length, { absolute: 1e-11 * scale, because: 'distances of that size cancel' });

describe('the engine agrees with the short formulas', () => {
  it('for a ring', () => {
    everyLens((lens, camera, { N, at, e }) => {
      const solved = sharp(camera, ring(e), on(lens, { at, fNumber: N }));
      const { focalLength, pupilMagnification } = lens;
      const magnification = magnificationFromExtension({ focusMagnification: at, extension: e, focalLength });
      const working = { fNumber: N, focalLength, magnification, pupilMagnification };
      expect(solved.magnification).toEqual(closeTo(magnification, cancels));
      expect(solved.effectiveFNumber).toEqual(closeTo(effectiveFNumber(working), cancels));
      expect(solved.pupil?.entrancePupil).toEqual(closeTo(focalLength / N, cancels));
      expect(solved.pupil?.entrancePupilDistance).toEqual(closeTo(entrancePupilDistance(working), cancels));
      const s = subjectDistance(working);
      const w = workingDistance({ subjectDistance: s, frontPrincipalDepth: lens.frontPrincipalDepth });
      expect(solved.workingDistance).toEqual(near(w, s + solved.focusDistance));
    });
  });

  it('for a lens turned round, whatever its pupils', () => {
    let tried = 0;
    everyLens((lens, camera, { N, e }) => {
      const { focalLength, pupilMagnification, registerDistance, frontPrincipalDepth } = lens;
      if (registerDistance + e + frontPrincipalDepth < 1.02 * focalLength) return;
      tried++;
      const solved = sharp(camera, ring(e), on(lens, { fNumber: N, reversed: true }));
      const magnification = magnificationOfReversedLens({
        registerDistance,
        extension: e,
        frontPrincipalDepth,
        focalLength,
      });
      const working = { fNumber: N, focalLength, magnification, pupilMagnification };
      const w = workingDistanceOfReversedLens({ ...working, reversedLensRegisterDistance: registerDistance });
      expect(solved.magnification).toEqual(closeTo(magnification, cancels));
      expect(solved.effectiveFNumber).toEqual(closeTo(effectiveFNumberOfReversedLens(working), cancels));
      expect(solved.workingDistance).toEqual(closeTo(w, cancels));
      expect(solved.pupil?.entrancePupil).toEqual(closeTo(entrancePupilOfReversedLens(working), cancels));
      const u = entrancePupilDistanceOfReversedLens(working);
      expect(solved.pupil?.entrancePupilDistance).toEqual(closeTo(u, cancels));
    });
    expect(tried).toBeGreaterThan(150);
  });

  it('for a lens turned round and racked out by q, whose flange comes q nearer: R − q + f/m', () => {
    everyLens((lens, camera, { at }) => {
      const { focalLength, registerDistance } = lens;
      const turned = on(lens, { at, reversed: true });
      const solved = sharp(camera, ring(2 * focalLength + Math.max(0, -lens.frontPrincipalDepth)), turned);
      const q = focalLength * at;
      const w = registerDistance - q + focalLength / solved.magnification;
      expect(solved.workingDistance).toEqual(near(w, solved.focusDistance));
    });
  });

  it('for a close-up lens on a lens at infinity, which costs no light and asks for no gap', () => {
    everyLens((lens, camera, { N, e, x }) => {
      const closeUpPower = 10 * x;
      const closeUp: Part = { part: 'close-up lens', closeUpPower };
      const solved = sharp(camera, on(lens, { fNumber: N }), ring(e), closeUp);
      const { focalLength } = lens;
      expect(solved.magnification).toEqual(closeTo(magnificationOfCloseUpLens({ focalLength, closeUpPower }), cancels));
      expect(solved.workingDistance).toEqual(closeTo(workingDistanceOfCloseUpLens({ closeUpPower }), cancels));
      expect(solved.lightLoss).toEqual(closeTo(0, { absolute: 1e-12, because: 'rounding' }));
    });
  });

  it('for a close-up lens on a lens focused close, behind its H too', () => {
    let tried = 0;
    let behindH = 0;
    everyLens((lens, camera, { N, at, x }) => {
      const closeUpPower = 10 * x;
      const { focalLength, frontPrincipalDepth, pupilMagnification } = lens;
      const s = subjectDistance({ focalLength, magnification: at });
      // Not a subject that the lens has inside it.
      if (frontPrincipalDepth > 0.95 * s) return;
      tried++;
      if (frontPrincipalDepth < 0) behindH++;
      const solved = sharp(camera, on(lens, { at, fNumber: N }), { part: 'close-up lens', closeUpPower });
      const given = {
        focusMagnification: at,
        closeUpPower,
        focalLength,
        closeUpGap: frontPrincipalDepth,
        fNumber: N,
        pupilMagnification,
      };
      const magnification = magnificationWithCloseUpLens(given);
      expect(solved.magnification).toEqual(closeTo(magnification, cancels));
      expect(solved.workingDistance).toEqual(
        closeTo(workingDistanceWithCloseUpLens({ ...given, magnification }), cancels),
      );
      expect(solved.effectiveFNumber).toEqual(closeTo(effectiveFNumberWithCloseUpLens(given), cancels));
    });
    expect(tried).toBeGreaterThan(100);
    expect(behindH).toBeGreaterThan(20);
  });

  it('for two lenses coupled, whatever the gap: the smaller pupil limits', () => {
    fc.assert(
      fc.property(
        unitLenses,
        unitLenses,
        valueIn([1, 32]),
        valueIn([1, 32]),
        valueIn([1, 60]),
        (main, front, N, M, gap) => {
          const camera: Part = {
            part: 'camera',
            registerDistance: main.registerDistance,
            sensorWidth: 36,
            sensorHeight: 24,
          };
          const parts = [camera, on(main, { fNumber: N }), ring(gap), on(front, { fNumber: M, reversed: true })];
          const solved = sharp(...parts);
          const lengths = { mainLensFocalLength: main.focalLength, reversedLensFocalLength: front.focalLength };
          expect(solved.magnification).toEqual(closeTo(magnificationOfCoupledLenses(lengths), cancels));
          expect(solved.workingDistance).toEqual(closeTo(front.registerDistance, cancels));
          const beam = Math.min(main.focalLength / N, front.focalLength / M);
          expect(solved.effectiveFNumber).toEqual(closeTo(main.focalLength / beam, cancels));
          const marked = { mainLensFNumber: N, reversedLensFNumber: M, magnification: solved.magnification };
          expect(solved.effectiveFNumber).toEqual(closeTo(effectiveFNumberOfCoupledLenses(marked), cancels));
        },
      ),
      { seed: 22, numRuns: 300 },
    );
  });

  it('for a converter behind rings', () => {
    everyLens((lens, camera, { N, at, e, x }) => {
      const converterFactor = 1.1 + 1.9 * x;
      const { focalLength, registerDistance, pupilMagnification } = lens;
      const converter: Part = { part: 'converter', converterFactor, converterLength: 20 + e / 10, registerDistance };
      const solved = sharp(camera, converter, ring(e), on(lens, { at, fNumber: N }));
      const magnification = magnificationWithConverter({
        converterFactor,
        focusMagnification: at,
        extension: e,
        focalLength,
      });
      const working = { fNumber: N, converterFactor, magnification, pupilMagnification };
      expect(solved.magnification).toEqual(closeTo(magnification, cancels));
      expect(solved.effectiveFNumber).toEqual(closeTo(effectiveFNumberWithConverter(working), cancels));
    });
  });

  it('for a ring between converter and camera, which makes the converter stronger', () => {
    everyLens((lens, camera, { N, e, x }) => {
      const k = 1.1 + 1.9 * x;
      const { focalLength, registerDistance, pupilMagnification } = lens;
      const converterLength = 20 + e / 10;
      const converter: Part = { part: 'converter', converterFactor: k, converterLength, registerDistance };
      const solved = sharp(camera, ring(e), converter, on(lens, { fNumber: N }));
      const magnification = magnificationWithRingBehindConverter({ extension: e, converterFactor: k, focalLength });
      expect(solved.magnification).toEqual(closeTo(magnification, cancels));
      const stronger = k + (e * (k - 1) ** 2) / (k * converterLength);
      expect(solved.effectiveFNumber).toEqual(closeTo(N * (stronger + magnification / pupilMagnification), cancels));
    });
  });

  it('for rings on both sides of a converter, behind a lens at any setting', () => {
    everyLens((lens, camera, { N, at, e, x }) => {
      const k = 1.1 + 1.9 * x;
      const { focalLength, registerDistance, pupilMagnification, frontPrincipalDepth } = lens;
      const lengths = { converterFactor: k, converterLength: 20 + e / 10, rearRingExtension: e };
      const converter: Part = { part: 'converter', registerDistance, ...lengths };
      const front = 40 * x;
      const solved = sharp(camera, ring(e), converter, ring(front), on(lens, { at, fNumber: N }));
      const workingConverterFactor = converterFactorWithRingBehind(lengths);
      const magnification = magnificationWithRingsAroundConverter({
        ...lengths,
        workingConverterFactor,
        focusMagnification: at,
        frontRingExtension: front,
        focalLength,
      });
      expect(solved.magnification).toEqual(closeTo(magnification, cancels));
      const working = { converterFactor: workingConverterFactor, magnification, pupilMagnification };
      expect(solved.effectiveFNumber).toEqual(
        closeTo(effectiveFNumberWithConverter({ ...working, fNumber: N }), cancels),
      );
      const room = workingDistanceWithConverter({ ...working, focalLength, frontPrincipalDepth });
      expect(solved.workingDistance).toEqual(near(room, 100 * solved.focusDistance));
    });
  });

  it('for an infinity objective on a camera lens, whatever the gap', () => {
    everyLens((lens, camera, { N, e, x }) => {
      const objective = { objectiveMagnification: 2 + 18 * x, numericalAperture: 0.05 + 0.4 * x, tubeFocalLength: 200 };
      const { objectiveMagnification, numericalAperture, tubeFocalLength } = objective;
      const mounted: Part = {
        part: 'objective',
        objectiveMagnification,
        numericalAperture,
        workingDistance: 5,
        design: { tubeFocalLength },
        parfocalDistance: 45,
      };
      // Opened so far that the objective limits.
      const solved = sharp(camera, on(lens, { fNumber: 0.1 }), ring(e), mounted);
      const { focalLength } = lens;
      const magnification = magnificationOfInfinityObjective({ ...objective, focalLength });
      expect(solved.magnification).toEqual(closeTo(magnification, cancels));
      const cone = effectiveFNumberOfObjective({ magnification, numericalAperture });
      expect(solved.effectiveFNumber).toEqual(closeTo(Math.max(cone, 0.1), cancels));
      // Closed to any mark, either of the two limits.
      const behind = sharp(camera, on(lens, { fNumber: N }), ring(e), mounted);
      const both = { magnification, numericalAperture, fNumber: N };
      expect(behind.effectiveFNumber).toEqual(closeTo(effectiveFNumberOfObjectiveOnLens(both), cancels));
      expect(solved.workingDistance).toEqual(near(5, 100 * solved.focusDistance));
    });
  });
});
