import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { prescriptions } from '#tests/support/prescriptions.ts';
import { lens50 } from '#tests/support/rig-parts.ts';
import { closestMagnification, lensInUse, stateAt } from './lens-in-use.ts';
import { lensOfPrescription } from './lens-of-prescription.ts';
// What traces: a lens of surfaces is among those that are tried.
import './prescription-in-use.ts';
import type { FocusState, InternalFocusing, Lens } from './lens.ts';
import { prescriptionInUse } from './prescription-in-use.ts';

/** 90 mm, life size at 0.29 m: down to 72.5 mm there. */
const focusing = {
  by: 'internal',
  closestMagnification: 1,
  closestFocusDistance: 290,
  keeps: 'entrance-pupil',
} as const;
const macro: Lens = {
  focalLength: 90,
  principalSeparation: 0,
  frontPrincipalDepth: 60,
  pupilMagnification: 0.8,
  registerDistance: 44,
  focusing,
  apertureControl: 'camera',
};
const keeping = (keeps: InternalFocusing['keeps']): Lens => ({ ...macro, focusing: { ...focusing, keeps } });
const rounding = { relative: 1e-13, because: 'rounding' };

describe('a lens that is focused as a whole', () => {
  it('keeps everything but its distance from the flange, which grows by f m₀', () => {
    const [far, near] = [lensInUse(lens50, 0, 8), lensInUse(lens50, 0.15, 8)];
    expect(near).toEqual({ ...far, flangeDepth: expect.anything() });
    expect(far.flangeDepth).toBe(50 - 44);
    expect(near.flangeDepth - far.flangeDepth).toEqual(closeTo(7.5, rounding));
    expect(far.entrancePupil).toBe(6.25);
  });

  it('draws back what stands out behind its flange by f m₀, but for what is fixed to the flange', () => {
    const deep = { ...lens50, rearProtrusion: 9, fixedProtrusion: 3 };
    const out = (lens: Lens, at: number) => lensInUse(lens, at, 8).rearProtrusion;
    expect(out(deep, 0)).toBe(9);
    expect(out(deep, 0.1)).toEqual(closeTo(4, rounding));
    expect(out(deep, 0.15)).toBe(3);
    expect(out({ ...deep, fixedProtrusion: 0 }, 0.15)).toEqual(closeTo(1.5, rounding));
    expect(out({ ...deep, fixedProtrusion: 12 }, 0.15)).toBe(9);
    expect(out(lens50, 0.15)).toBe(0);
    expect(() => out({ ...deep, rearProtrusion: -1 }, 0)).toThrow(/rear-protrusion is -1/);
    expect(() => out({ ...deep, fixedProtrusion: NaN }, 0)).toThrow(/rear-protrusion is NaN/);
  });

  it('refuses to go closer than it goes, by name', () => {
    expect(closestMagnification(lens50)).toBe(0.15);
    expect(() => lensInUse(lens50, 0.16, 8)).toThrow(OutOfRange);
    expect(() => lensInUse(lens50, 0.16, 8)).toThrow(/focus-magnification is 0.16; accepted: from 0 to 0.15/);
    expect(() => lensInUse(lens50, 0, 0)).toThrow(/f-number is 0/);
  });
});

describe('a lens known by closest distance and magnification', () => {
  it('is down to 72.5 mm at life size, 290 mm away', () => {
    expect(lensInUse(macro, 1, 2.8).focalLength).toEqual(closeTo(72.5, rounding));
    expect(lensInUse(macro, 0, 2.8).focalLength).toEqual(closeTo(90, rounding));
  });

  it('keeps its barrel: rim to flange is as long at every setting', () => {
    const lengths = [0, 0.3, 0.7, 1].map((at) => {
      const { frontPrincipalDepth, principalSeparation, flangeDepth } = lensInUse(macro, at, 2.8);
      return frontPrincipalDepth + principalSeparation + flangeDepth;
    });
    for (const length of lengths) expect(length).toEqual(closeTo(60 + 90 - 44, rounding));
  });

  it('differs by 0.62 stop between what may be assumed kept, the entrance pupil or its ratio to f', () => {
    const [pupil, ratio] = [lensInUse(keeping('entrance-pupil'), 1, 2.8), lensInUse(keeping('f-number'), 1, 2.8)];
    expect(pupil.entrancePupil).toEqual(closeTo(90 / 2.8, rounding));
    expect(ratio.entrancePupil).toEqual(closeTo(72.5 / 2.8, rounding));
    const stops = 2 * Math.log2(pupil.entrancePupil / ratio.entrancePupil);
    expect(stops).toEqual(closeTo(0.62, { absolute: 0.005, because: 'stated to two decimals' }));
  });
});

describe('a lens whose iris and rear group stand still', () => {
  const lens = keeping('iris-and-rear-group');

  it('has its exit pupil where it was and as wide, so that N_w stays, and is solved to its two numbers', () => {
    for (const at of [0, 0.2, 0.6, 1]) {
      const { focalLength, pupilMagnification: pupils, entrancePupil } = lensInUse(lens, at, 4);
      expect(focalLength * (at + pupils)).toEqual(closeTo(90 * 0.8, rounding));
      expect(pupils * entrancePupil).toEqual(closeTo((0.8 * 90) / 4, rounding));
    }
    const { focalLength, principalSeparation } = lensInUse(lens, 1, 4);
    expect(focalLength * 4 + principalSeparation).toEqual(closeTo(290, rounding));
  });

  it('keeps its barrel and H′ where they were', () => {
    for (const at of [0.3, 1]) {
      const { frontPrincipalDepth, principalSeparation, flangeDepth } = lensInUse(lens, at, 4);
      expect(flangeDepth).toEqual(closeTo(90 - 44, rounding));
      expect(frontPrincipalDepth + principalSeparation).toEqual(closeTo(60, rounding));
    }
  });

  it('is refused by name where its exit pupil is too small to have stood still', () => {
    const small: Lens = { ...lens, pupilMagnification: 0.45 };
    expect(lensInUse(small, 0.5, 4).pupilMagnification).toEqual(closeTo(0.175, rounding));
    expect(() => lensInUse(small, 1, 4)).toThrow(/pupil-magnification is 0.45; accepted: above 0.5, or iris/);
    const nowhere: Lens = { ...lens, focusing: { ...focusing, closestMagnification: 0, keeps: 'iris-and-rear-group' } };
    expect(() => lensInUse(nowhere, 0, 4)).toThrow(/focus-magnification is 0/);
  });
});

describe('a lens focused by its prescription', () => {
  const lens: Lens = { ...macro, focusing: { by: 'prescription' } };

  it('has its last surface out behind the flange as far as its spacings say, setting by setting', () => {
    const prescription = prescriptions['macro-60-us-5751485'];
    const deep = lensOfPrescription(prescription, { registerDistance: 46.5, apertureControl: 'lens' });
    const closest = closestMagnification(deep);
    for (const at of [0, closest / 2, closest]) {
      const toSensor = prescriptionInUse(prescription, at).surfaces.at(-1)!.thickness;
      const { rearProtrusion } = lensInUse(deep, at, 4);
      expect(rearProtrusion).toEqual(
        closeTo(Math.max(0, 46.5 - toSensor), { absolute: 1e-3, because: 'a sensor is taken where light meets' }),
      );
      expect(lensInUse({ ...deep, rearProtrusion: 20 }, at, 4).rearProtrusion).toBe(20);
    }
  });

  it('is refused where it has none, and where that is another lens', () => {
    expect(() => stateAt(lens, 0)).toThrow(/needs to have it/);
    const other = { ...lens, prescription: prescriptions['macro-60-us-5751485'] };
    expect(() => stateAt(other, 0)).toThrow(/focal-length is 59.99\d+; accepted: 90 in the first/);
  });
});

describe('a lens known at several settings', () => {
  const states: readonly FocusState[] = [0, 0.5, 1].map((at) => ({
    focusMagnification: at,
    focalLength: 1 / (1 / 60 + at * 0.0036),
    principalSeparation: 6 + 10 * at + 4 * at ** 2,
    frontPrincipalDepth: 9 - at,
    pupilMagnification: 0.96 - 0.15 * at,
    fNumberDrift: 1 - 0.1 * at ** 2,
  }));
  const { focalLength, principalSeparation, frontPrincipalDepth, pupilMagnification } = states[0]!;
  const lens: Lens = {
    ...macro,
    focalLength,
    principalSeparation,
    frontPrincipalDepth,
    pupilMagnification,
    focusing: { by: 'states', states },
  };

  it('is at each of them what is known', () => {
    for (const state of states) {
      for (const [name, value] of Object.entries(stateAt(lens, state.focusMagnification))) {
        expect(value, name).toEqual(closeTo(state[name as keyof FocusState], rounding));
      }
    }
  });

  it('is in between what the elements of its ray-transfer matrix are there: power even, h/f and N_w smooth', () => {
    const between = stateAt(lens, 0.3);
    expect(between.focalLength).toEqual(closeTo(1 / (1 / 60 + 0.3 * 0.0036), rounding));
    const slenderness = (at: FocusState) => at.fNumberDrift * (1 + at.focusMagnification / at.pupilMagnification);
    // The parabola through the three at 0.3: 0.28, 0.84 and −0.12 of them.
    const parabola = (valueOf: (state: FocusState) => number) =>
      0.28 * valueOf(states[0]!) + 0.84 * valueOf(states[1]!) - 0.12 * valueOf(states[2]!);
    expect(slenderness(between)).toEqual(closeTo(parabola(slenderness), rounding));
    const depth = ({ frontPrincipalDepth: h, focalLength: f }: FocusState) => h / f;
    expect(depth(between)).toEqual(closeTo(parabola(depth), rounding));
  });

  it('is refused by name where its settings do not run from infinity nearer and nearer, or are none', () => {
    const known = (...at: number[]): Lens => ({
      ...macro,
      focusing: { by: 'states', states: at.map((m) => ({ ...states[0]!, focusMagnification: m })) },
    });
    expect(() => stateAt(known(0.1, 0.5), 0.2)).toThrow(/focus-magnification is 0.1; accepted: 0 in the first/);
    expect(() => stateAt(known(0, 0.5, 0.5), 0.2)).toThrow(/focus-magnification is 0.5; accepted: 0 in the first/);
    expect(() => stateAt(known(), 0)).toThrow(/focus-magnification is NaN; accepted: one known setting/);
    const noLength: Lens = { ...macro, focusing: { by: 'states', states: [{ ...states[0]!, focalLength: 0 }] } };
    expect(() => stateAt(noLength, 0)).toThrow(/focal-length is 0/);
  });

  it('is refused by name where a state has no such number, or the first is not the lens itself', () => {
    const changed = (place: number, change: Partial<FocusState>): Lens => ({
      ...lens,
      focusing: { by: 'states', states: states.map((state, at) => (at === place ? { ...state, ...change } : state)) },
    });
    expect(() => stateAt(changed(1, { principalSeparation: NaN }), 0.5)).toThrow(/principal-separation is NaN/);
    expect(() => stateAt(changed(2, { frontPrincipalDepth: Infinity }), 0)).toThrow(
      /front-principal-depth is Infinity/,
    );
    expect(() => stateAt(changed(1, { pupilMagnification: 0 }), 0)).toThrow(/pupil-magnification is 0/);
    expect(() => stateAt(changed(1, { fNumberDrift: -1 }), 0)).toThrow(/f-number is -1/);
    for (const name of ['focalLength', 'principalSeparation', 'frontPrincipalDepth', 'pupilMagnification'] as const) {
      const other = states[0]![name] + 1;
      expect(() => stateAt(changed(0, { [name]: other }), 0), name).toThrow(
        `is ${other}; accepted: ${states[0]![name]} in`,
      );
    }
    expect(() => stateAt(changed(0, { fNumberDrift: 3 }), 0)).toThrow(/f-number is 3; accepted: a drift of 1/);
  });

  it('reaches as far as the last one', () => {
    expect(closestMagnification(lens)).toBe(1);
    expect(() => stateAt(lens, 1.1)).toThrow(/focus-magnification is 1.1/);
  });
});
