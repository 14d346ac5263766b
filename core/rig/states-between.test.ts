import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { valueIn } from '#tests/support/sample.ts';
import type { FocusState } from './lens.ts';
import { stateBetween } from './states-between.ts';

const rounding = { relative: 1e-11, because: 'rounding' };

/** A thin lens of *front* at *gap* before a thin one of *rear* with the iris in it, *back* before the sensor: the gap alone changes. */
function twoThin(front: number, rear: number, back: number, gap: number): FocusState {
  const power = 1 / front + 1 / rear - gap / (front * rear);
  const focalLength = 1 / power;
  const rearPrincipal = -(gap * focalLength) / front;
  const depth = (gap * focalLength) / rear;
  const focusMagnification = (back - rearPrincipal) / focalLength - 1;
  const entrance = 1 / Math.abs(1 - gap / front);
  return {
    focusMagnification,
    focalLength,
    principalSeparation: gap + rearPrincipal - depth,
    frontPrincipalDepth: depth,
    pupilMagnification: 1 / entrance,
    fNumberDrift: focalLength / entrance,
  };
}

describe('stateBetween', () => {
  it('is exact for two lenses of which the front one moves: a single spacing changes', () => {
    fc.assert(
      fc.property(valueIn([60, 200]), valueIn([40, 150]), valueIn([2, 30]), valueIn([0.1, 0.9]), (f, r, gap, share) => {
        const back = (1 / (1 / (f - gap) + 1 / r)) as number;
        const [far, between, near] = [gap, gap + share * 15, gap + 15].map((at) => twoThin(f, r, back, at));
        fc.pre(near!.pupilMagnification > 0 && near!.focusMagnification > between!.focusMagnification);
        const drifted = (state: FocusState) => ({ ...state, fNumberDrift: state.fNumberDrift / far!.fNumberDrift });
        const states = [{ ...far!, focusMagnification: 0 }, near!].map(drifted);
        const answer = stateBetween(states, between!.focusMagnification);
        for (const [name, value] of Object.entries(drifted(between!))) {
          expect(answer[name as keyof FocusState], name).toEqual(
            closeTo(value, { absolute: 1e-8, because: 'long focal lengths cancel' }),
          );
        }
      }),
      { seed: 92, numRuns: 200 },
    );
  });

  it('is exact for a lens that is focused as a whole', () => {
    const one = {
      focalLength: 50,
      principalSeparation: -4,
      frontPrincipalDepth: 22,
      pupilMagnification: 1.2,
      fNumberDrift: 1,
    };
    const between = stateBetween(
      [0, 0.3, 1].map((at) => ({ ...one, focusMagnification: at })),
      0.45,
    );
    for (const [name, value] of Object.entries({ ...one, focusMagnification: 0.45 })) {
      expect(between[name as keyof FocusState], name).toEqual(closeTo(value, rounding));
    }
  });

  it('leaves N_w as it is where exit pupil and iris stand still, however f and P run', () => {
    // The exit pupil 60 mm before the sensor and 15 mm wide at f/4: P = 60/f − m₀, D = 15/P.
    const still = (focusMagnification: number, focalLength: number): FocusState => {
      const pupilMagnification = 60 / focalLength - focusMagnification;
      return {
        focusMagnification,
        focalLength,
        principalSeparation: 3 + 20 * focusMagnification,
        frontPrincipalDepth: 30,
        pupilMagnification,
        fNumberDrift: (focalLength * pupilMagnification) / 60,
      };
    };
    const states = [still(0, 100), still(0.4, 70), still(0.6, 55)];
    for (const at of [0.05, 0.2, 0.39, 0.5]) {
      const { fNumberDrift, pupilMagnification } = stateBetween(states, at);
      expect(fNumberDrift * (1 + at / pupilMagnification)).toEqual(closeTo(1, rounding));
    }
  });

  it('refuses by name where states contradict each other so far that no pupil lies between', () => {
    const one = { focalLength: 200, principalSeparation: 0, frontPrincipalDepth: 20 };
    const states = [
      { ...one, focusMagnification: 0, pupilMagnification: 0.01, fNumberDrift: 1 },
      { ...one, focusMagnification: 2, pupilMagnification: 1, fNumberDrift: 0.001 },
    ];
    expect(() => stateBetween(states, 0.5)).toThrow(OutOfRange);
    expect(() => stateBetween(states, 0.5)).toThrow(/pupil-magnification is -/);
  });
});
