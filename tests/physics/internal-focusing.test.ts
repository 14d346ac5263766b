import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closeFocusFocalLength } from '#core/gaussian/close-focus-focal-length.formula.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import { internalFocusBrackets, type Bracket as FocusBracket } from '#core/rig/internal-focus-brackets.ts';
import { focusMagnificationFor, focusRange } from '#core/rig/focusing.ts';
import { lensOfPrescription } from '#core/rig/lens-of-prescription.ts';
import { closestMagnification, lensInUse, stateAt } from '#core/rig/lens-in-use.ts';
import type { FocusState, InternalFocusing, Lens } from '#core/rig/lens.ts';
import type { Part } from '#core/rig/part.ts';
import { prescriptionSettings } from '#core/rig/prescription-settings.ts';
import { reversedPrescription } from '#core/rig/reversed-prescription.ts';
import { glassPoints } from '#core/rig/paraxial-trace.ts';
import { solveRig } from '#core/rig/solve.ts';
import type { SharpRig } from '#core/rig/solved-rig.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { focusedPrescriptions, prescriptionNames, prescriptions } from '#tests/support/prescriptions.ts';
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

describe('the 200 mm macro lens of a patent, whose iris and rear group stand still', () => {
  const prescription = prescriptions['macro-200-us-5751485'];
  const lens = lensOfPrescription(prescription, { registerDistance: 46.5, apertureControl: 'camera' });
  const onCamera = (at: number, of = lens) => [
    { ...camera, registerDistance: 46.5 } as Part,
    on(of, { at, fNumber: 4.07 }),
  ];

  it('has the cone at the sensor that it has at infinity, at every setting', () => {
    fc.assert(
      fc.property(valueIn([0.001, 0.999]), (at) => {
        expect(sharp(onCamera(at)).effectiveFNumber).toEqual(closeTo(4.07, { relative: 1e-10, because: 'rounding' }));
      }),
      { seed: 62, numRuns: 100 },
    );
  });

  it('has its rim where its front group is, out by 7.6 mm half way and back again', () => {
    const rim = (at: number) => {
      const { focusDistance, workingDistance } = sharp(onCamera(at));
      return focusDistance - workingDistance;
    };
    const printed = { absolute: 1e-6, because: 'spacings of five decimals, at the settings themselves' };
    const [, half, closest] = prescriptionSettings(prescription).traced as [number, number, number];
    expect(rim(half) - rim(closest)).toEqual(closeTo(14.2099 - 6.6433, printed));
  });

  it('is told by its two numbers, its iris and rear group being still, to the same N_w', () => {
    const close = closestMagnification(lens);
    const { focusDistance } = sharp(onCamera(close));
    const focusing = { by: 'internal', closestMagnification: close, closestFocusDistance: focusDistance } as const;
    for (const share of [0.1, 0.5, 1]) {
      const solved = sharp(
        onCamera(share * close, { ...lens, focusing: { ...focusing, keeps: 'iris-and-rear-group' } }),
      );
      expect(solved.effectiveFNumber).toEqual(closeTo(4.07, exact));
      // What else is known of it then: H' is taken to have stayed, and does within a seventh of f.
      const traced = stateAt(lens, share * close).focalLength;
      expect(
        stateAt({ ...lens, focusing: { ...focusing, keeps: 'iris-and-rear-group' } }, share * close).focalLength,
      ).toEqual(closeTo(traced, { relative: 1 / 7, because: 'f∞/(1 + m₀) is an assumption' }));
    }
  });
});

describe.each(prescriptionNames)('%s, known by two numbers', (name) => {
  const prescription = prescriptions[name];
  const registerDistance = glassPoints(prescription.surfaces).backFocus / 2;
  // Without settings it is focused as a whole, which is one of the two extremes.
  const lens = lensOfPrescription(prescription, {
    registerDistance,
    apertureControl: 'camera',
    closestMagnification: 0.4,
  });
  const close = closestMagnification(lens);
  const onIts = (of: Lens, at: number) => sharp([{ ...camera, registerDistance } as Part, on(of, { at, fNumber: 4 })]);
  const focusing = {
    by: 'internal',
    closestMagnification: close,
    closestFocusDistance: onIts(lens, close).focusDistance,
  } as const;
  const byTwo: Lens = { ...lens, focusing: { ...focusing, keeps: 'f-number' } };
  const published = prescriptionSettings(prescription).traced.slice(1);

  it.each([...published, ...[0.01, 0.1, 0.3, 0.8, 0.99, 1].map((share) => share * close)])(
    'lies within the brackets that they leave, at m₀ = %d',
    (at) => {
      const truth = onIts(lens, at);
      const { focalLength, inverseEntrancePupilDistance, ...brackets } = internalFocusBrackets(byTwo, at, 4);
      const held = (value: number, { least, most }: FocusBracket) => {
        const rounding = 1e-9 * Math.abs(value);
        expect(value).toBeGreaterThanOrEqual(least - rounding);
        expect(value).toBeLessThanOrEqual(most + rounding);
      };
      held(stateAt(lens, at).focalLength, focalLength);
      held(1 / (truth.pupil?.entrancePupilDistance ?? Infinity), inverseEntrancePupilDistance);
      for (const known of ['effectiveFNumber', 'focusDistance', 'workingDistance'] as const) {
        held(truth[known], brackets[known]);
      }
    },
  );
});

describe.each(focusedPrescriptions)('%s, known at its published settings only', (name) => {
  const lens = lensOfPrescription(prescriptions[name], { registerDistance: 20, apertureControl: 'camera' });
  const { traced } = prescriptionSettings(prescriptions[name]);
  const close = closestMagnification(lens);
  const on20 = (of: Lens, at: number) =>
    sharp([{ ...camera, registerDistance: 20 } as Part, on(of, { at, fNumber: 4 })]);
  const byStates: Lens = { ...lens, focusing: { by: 'states', states: traced.map((at) => stateAt(lens, at)) } };

  it('is at its known settings what it is by trace', () => {
    for (const at of traced) expect(stateAt(byStates, at)).toEqual(stateAt(lens, at));
  });

  it('is between its known settings near what it is by trace: 0.01 stops, 0.15 mm of rim, 1 % of f and w', () => {
    for (let share = 0.02; share < 1; share += 0.02) {
      const at = share * close;
      const [guess, truth] = [on20(byStates, at), on20(lens, at)];
      const stops = 2 * Math.log2(guess.effectiveFNumber / truth.effectiveFNumber);
      expect(stops).toEqual(closeTo(0, { absolute: 0.01, because: 'measured: 0.0094 in the 100 mm lens' }));
      const rim = ({ focusDistance, workingDistance }: SharpRig) => focusDistance - workingDistance;
      expect(rim(guess)).toEqual(closeTo(rim(truth), { absolute: 0.15, because: 'measured: 0.14 in the 100 mm lens' }));
      const percent = { relative: 0.01, because: 'measured: 0.8 % in the 200 mm lens, whose front group turns' };
      expect(guess.workingDistance).toEqual(closeTo(truth.workingDistance, percent));
      expect(stateAt(byStates, at).focalLength).toEqual(closeTo(stateAt(lens, at).focalLength, percent));
    }
  });

  it('contradicts itself nowhere: subject, pupils and cone between known settings are those of one lens', () => {
    for (const share of [0.03, 0.25, 0.6, 0.97]) {
      const at = share * close;
      const {
        focalLength: f,
        pupilMagnification: P,
        principalSeparation,
        frontPrincipalDepth: h,
      } = stateAt(byStates, at);
      const solved = on20(byStates, at);
      expect(solved.magnification).toEqual(closeTo(at, exact));
      expect(solved.focusDistance).toEqual(closeTo(f * (2 + at + 1 / at) + principalSeparation, exact));
      expect(solved.workingDistance).toEqual(closeTo(f * (1 + 1 / at) - h, exact));
      expect(solved.pupil?.entrancePupilDistance).toEqual(closeTo(f * (1 / at + 1 / P), exact));
      // Its aperture on the subject's side is that at the sensor, m times as slender.
      const { entrancePupil = NaN, entrancePupilDistance = NaN } = solved.pupil ?? {};
      expect(entrancePupil / entrancePupilDistance).toEqual(closeTo(at / solved.effectiveFNumber, exact));
    }
  });
});

it('a lens of which a single spacing changes is known everywhere by its two ends', () => {
  const lens = lensOfPrescription(prescriptions['macro-35-us-7715118'], {
    registerDistance: 20,
    apertureControl: 'camera',
  });
  const states = [0, closestMagnification(lens)].map((at) => stateAt(lens, at));
  const byStates: Lens = { ...lens, focusing: { by: 'states', states } };
  for (const at of [0.02, 0.3, 0.77]) {
    const truth = stateAt(lens, at);
    for (const [known, value] of Object.entries(stateAt(byStates, at))) {
      expect(value, known).toEqual(closeTo(truth[known as keyof FocusState], { relative: 1e-10, because: 'rounding' }));
    }
  }
});

describe.each(prescriptionNames.filter((name) => !focusedPrescriptions.includes(name)))('%s turned round', (name) => {
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
