import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { balancedFocus } from '#core/depth/balanced-focus.ts';
import {
  backgroundWidthOfCone,
  defocusBlurOfCone,
  effectiveFNumberForBlur,
  magnificationOffPlaneOfCone,
} from '#core/depth/blur-of-cone.ts';
import { depthOfFieldCloseUp } from '#core/depth/depth-of-field-close-up.formula.ts';
import { depthOfFieldOfCone } from '#core/depth/depth-of-field-of-cone.formula.ts';
import { limitsOfCone } from '#core/depth/limits-of-cone.ts';
import { assembleRig } from '#core/rig/assemble.ts';
import { conesOfChain } from '#core/rig/cones-of-chain.ts';
import { ImpossibleChain } from '#core/rig/impossible-chain.ts';
import type { Lens } from '#core/rig/lens.ts';
import type { Part } from '#core/rig/part.ts';
import { solveRig } from '#core/rig/solve.ts';
import type { SharpRig } from '#core/rig/solved-rig.ts';
import { railPlan } from '#core/stack/rail-plan.ts';
import { scaleBetweenFrames } from '#core/stack/scale-between-frames.ts';
import { bestFNumber } from '#core/wave/best-f-number.ts';
import { spotOf } from '#tests/support/chain-rays.ts';
import { chains } from '#tests/support/mounted-chains.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { camera, on, ring } from '#tests/support/rig-parts.ts';

/** A chain solved, and how to trace a point *offset* behind its sharp plane. */
function traced(parts: readonly Part[]) {
  const rig = assembleRig(parts);
  const solved = solveRig(rig);
  if (solved.sharpPlane !== 'in front' && solved.sharpPlane !== 'inside') return null;
  const stop = rig.elements.find(({ part, exitRadius }) => part === solved.limitedBy && exitRadius < Infinity)!;
  const spot = (offset: number, across = 0) => spotOf(rig, stop, { ahead: solved.workingDistance + offset, across });
  const blur = (offset: number) => Math.abs(spot(offset).upper - spot(offset).lower);
  return { solved, spot, blur };
}

const simple = (focalLength: number, more: Partial<Lens>): Lens => ({
  focalLength,
  principalSeparation: 0,
  frontPrincipalDepth: 20,
  pupilMagnification: 1,
  registerDistance: 44,
  focusing: { by: 'unit', closestMagnification: 0.2 },
  apertureControl: 'lens',
  ...more,
});

/** The three that used to have no depth at all. */
const oddities: Readonly<Record<string, { parts: readonly Part[]; pupilAt: number }>> = {
  'a tenfold objective on its tube lens': {
    parts: [
      camera,
      ring(156),
      { part: 'tube lens', focalLength: 200 },
      ring(80),
      {
        part: 'objective',
        objectiveMagnification: 10,
        numericalAperture: 0.25,
        workingDistance: 10,
        design: { tubeFocalLength: 200 },
        parfocalDistance: 45,
      },
    ],
    pupilAt: Infinity,
  },
  'a 50 mm lens turned round on a 135 mm lens': {
    parts: [
      camera,
      on(simple(135, { frontPrincipalDepth: 90, pupilMagnification: 0.8 }), { fNumber: 16 }),
      on(simple(50, { frontPrincipalDepth: 20 }), { fNumber: 2, reversed: true }),
    ],
    // The stop 76.25 + … in front of the second lens is imaged 50²/(d − 50) behind the subject.
    pupilAt: -(50 ** 2) / (90 - 135 * (1 - 1 / 0.8) + 20 - 50),
  },
  'a close-up lens of four dioptres on a long lens': {
    parts: [
      camera,
      on(simple(300, { frontPrincipalDepth: 120, pupilMagnification: 0.55 }), { fNumber: 8 }),
      { part: 'close-up lens', closeUpPower: 4, clearAperture: 77 },
    ],
    pupilAt: -(250 ** 2) / (120 - 300 * (1 - 1 / 0.55) - 250),
  },
};

describe.each(Object.entries(oddities))('%s', (_, { parts, pupilAt }) => {
  const { solved, spot, blur } = traced(parts)!;
  const c = 0.02;
  const close = { relative: 1e-7, because: 'rays through metres of glass and air that cancel to microns' };

  it('is seen from where its stop’s image stands', () => {
    expect(solved.sharpPlane).toBe('in front');
    expect(solved.inverseEntrancePupilDistance).toEqual(closeTo(1 / pupilAt, { absolute: 1e-12, because: 'rounding' }));
    expect(solved.inverseEntrancePupilDistance).toBeLessThanOrEqual(0);
  });

  it('draws the circle of confusion from both limits, and the deeper side is the one away from the pupil', () => {
    const { nearLimit, farLimit } = limitsOfCone(solved, c);
    expect(blur(-nearLimit)).toEqual(closeTo(c, close));
    expect(blur(farLimit)).toEqual(closeTo(c, close));
    expect(nearLimit).toBeGreaterThanOrEqual(farLimit);
    expect(depthOfFieldOfCone({ ...solved, circleOfConfusion: c })).toBe(nearLimit + farLimit);
  });

  it('shows details off the plane as large as rays through the middle of the stop do', () => {
    for (const offset of [-3, -0.2, 0.4, 5]) {
      const size = Math.abs(spot(offset, 0.01).middle - spot(offset, 0).middle) / 0.01;
      expect(magnificationOffPlaneOfCone({ ...solved, offset })).toEqual(closeTo(size, close));
    }
    const widths = [0, 10].map((backgroundDistance) => backgroundWidthOfCone({ ...solved, backgroundDistance }));
    expect(widths[1]).toBeLessThanOrEqual(widths[0]!);
  });

  it('can be stacked on a rail, in which a fixed detail does not grow', () => {
    const limits = limitsOfCone(solved, c);
    const { frameStep, frameCount } = railPlan({ ...limits, subjectDepth: 4, overlap: 0.25 });
    expect(frameCount).toBeGreaterThan(1);
    const scale = scaleBetweenFrames({ first: solved, second: solved, step: frameStep });
    expect(scale).toEqual(closeTo(spot(-frameStep, 0.01).middle / spot(0, 0.01).middle, close));
    expect(scale).toBeLessThanOrEqual(1);
  });
});

describe('the best f-number of a lens behind another', () => {
  it('is asked for by the iris of that lens, and is no other than that of its cones', () => {
    const { parts } = oddities['a 50 mm lens turned round on a 135 mm lens']!;
    const coneAt = conesOfChain(parts, 1);
    const task = { subjectDepth: 0.2, wavelength: 0.00055, spatialFrequency: 25, coneAt };
    const best = bestFNumber(task, [2.8, 4, 5.6, 8, 11, 16, 22])!;
    // The whole 135 mm lens stands at infinity: its cone is what is marked.
    const [open, closed] = [coneAt(8), coneAt(16)];
    expect(closed.effectiveFNumber / open.effectiveFNumber).toEqual(
      closeTo(2, { relative: 1e-12, because: 'rounding' }),
    );
    // By the closed form 23.3.
    expect(best.fNumber).toBe(22);
    expect(best.contrast).toBeGreaterThan(0.3);
    expect(best.planeDepth).toBeGreaterThan(0.1);
    expect(() => conesOfChain(parts, 0)).toThrow(/part 0 is camera; accepted: a lens/);
    expect(() => conesOfChain([camera, on(simple(50, {}))], 1)(8)).toThrow(/magnification is 0/);
  });
});

describe('random chains', () => {
  const counts = { all: 0, telecentric: 0, behind: 0, infinite: 0, compared: 0 };
  const c = 0.025;

  it('have limits that draw the circle of confusion by traced rays, whichever side the pupil is on', () => {
    fc.assert(
      fc.property(chains, (parts) => {
        const chain = tracedOrNull(parts);
        if (!chain) return;
        const { solved, blur } = chain;
        const { nearLimit, farLimit } = limitsOfCone(solved, c);
        counts.all++;
        if (Math.abs(solved.inverseEntrancePupilDistance) < 1e-9) counts.telecentric++;
        else if (solved.inverseEntrancePupilDistance < 0) counts.behind++;
        for (const offset of [-nearLimit, farLimit]) {
          if (!Number.isFinite(offset)) {
            counts.infinite++;
            continue;
          }
          // The rays cross over the whole chain and cancel to the circle; the place is counted from the foremost surface.
          const lost = 1e-11 * (Math.abs(solved.focusDistance) + Math.abs(solved.workingDistance)) * reachOf(solved);
          if (lost > 0.1 * c) continue;
          counts.compared++;
          expect(blur(offset)).toEqual(
            closeTo(c, { absolute: lost + 1e-6 * c, because: 'rays of long chains cancel' }),
          );
        }
        stackAndBlur(solved);
      }),
      { seed: 101, numRuns: 8000 },
    );
  });

  it('were tried in thousands, a good part of them telecentric or with the pupil behind the subject', () => {
    expect(counts.all).toBeGreaterThan(4000);
    expect(counts.compared + counts.infinite).toBeGreaterThan(1.95 * counts.all);
    expect(counts.telecentric).toBeGreaterThan(100);
    expect(counts.behind).toBeGreaterThan(200);
    expect(counts.infinite).toBeGreaterThan(50);
  });
});

function tracedOrNull(parts: readonly Part[]) {
  try {
    return traced(parts);
  } catch (error) {
    if (error instanceof ImpossibleChain) return null;
    throw error;
  }
}

/** Blur a millimetre off the plane, close to it. */
const reachOf = ({ magnification, effectiveFNumber }: SharpRig) => magnification ** 2 / effectiveFNumber;

/** Everything else that asks for a cone answers in finite numbers. */
function stackAndBlur(solved: SharpRig): void {
  const inverse = solved.inverseEntrancePupilDistance;
  const step = inverse === 0 ? 1 : 0.01 / Math.abs(inverse);
  const answers = [
    defocusBlurOfCone({ ...solved, offset: step }),
    magnificationOffPlaneOfCone({ ...solved, offset: -step }),
    effectiveFNumberForBlur({ ...solved, offset: step, defocusBlur: 0.02 }),
    scaleBetweenFrames({ first: solved, second: solved, step }),
    backgroundWidthOfCone({ ...solved, backgroundDistance: 1000 }),
    balancedFocus({ subjectDepth: 5, inverseEntrancePupilDistance: inverse }).toNearest,
    depthOfFieldCloseUp({ ...solved, circleOfConfusion: 0.02 }),
  ];
  for (const answer of answers) expect(Number.isFinite(answer)).toBe(true);
}
