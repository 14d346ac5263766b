import { assembleRig } from '#core/rig/assemble.ts';
import { lensOfPrescription } from '#core/rig/lens-of-prescription.ts';
import type { Lens } from '#core/rig/lens.ts';
import type { Part } from '#core/rig/part.ts';
import type { Element, Rig } from '#core/rig/rig.ts';
import { solveRig } from '#core/rig/solve.ts';
import { prescriptions } from '#tests/support/prescriptions.ts';
import { percentile } from './percentile.ts';

/** How fast a rig is solved, on one core. */
export interface RigSpeed {
  /** Rigs solved in a second: principal planes and stops in place. */
  readonly solvedPerSecond: number;
  /** Rigs checked, put together and solved in a second: from parts to answer. */
  readonly fromPartsPerSecond: number;
  /** Time of the engine over time of the same chain multiplied out by hand. */
  readonly timesByHand: number;
  /** From parts to answer with a lens of 22 surfaces traced at a setting it was never at, over the same with one focused as a whole. */
  readonly timesTraced: number;
  /** The same at settings that it was at before. */
  readonly timesTracedBefore: number;
}

const lens: Lens = {
  focalLength: 50,
  principalSeparation: -4,
  frontPrincipalDepth: 22,
  pupilMagnification: 1.1,
  registerDistance: 44,
  focusing: { by: 'unit', closestMagnification: 0.15 },
  apertureControl: 'camera',
};

/** A lens that carries its prescription, 200 mm, and as it would be if it were focused as a whole. */
const traced = lensOfPrescription(prescriptions['macro-200-us-5751485'], {
  registerDistance: 44,
  apertureControl: 'camera',
});
const asAWhole: Lens = { ...traced, focusing: { by: 'unit', closestMagnification: 1 } };

/** A camera with that lens at one of its settings. */
export const tracedChain = (focusMagnification: number, of: Lens = traced): Part[] => [
  { part: 'camera', registerDistance: 44, sensorWidth: 36, sensorHeight: 24 },
  { part: 'lens', lens: of, focusMagnification, fNumber: 8 },
];

/** A chain with one of everything that is usual. */
export const chain = (extension: number): Part[] => [
  { part: 'camera', registerDistance: 44, sensorWidth: 36, sensorHeight: 24 },
  { part: 'converter', converterFactor: 1.4, converterLength: 20, registerDistance: 44 },
  { part: 'ring', extension },
  { part: 'lens', lens, focusMagnification: 0.1, fNumber: 8 },
  { part: 'ring', extension: 5 },
  { part: 'close-up lens', closeUpPower: 2 },
];

const count = 1024;

/** Seconds that each of *things* takes to be answered, all of them forty times over. */
function secondsEach<Thing>(things: readonly Thing[], answer: (thing: Thing) => number): number {
  let kept = 0;
  const start = performance.now();
  for (let repeat = 0; repeat < 40; repeat++) for (const thing of things) kept += answer(thing);
  const seconds = (performance.now() - start) / 1000;
  if (!Number.isFinite(kept)) throw new Error('The chain has no answer, so its speed means nothing.');
  return seconds / (40 * things.length);
}

/** The same chain, all three lenses written out, with every number that the engine answers. */
export function byHand({ elements, frontGap, length, camera }: Rig) {
  const [k, l, c] = elements as [Element, Element, Element];
  const y2k = k.gap;
  const v2k = 1 - k.power * y2k;
  const v1k = -k.power;
  const y1l = 1 + l.gap * v1k;
  const y2l = y2k + l.gap * v2k;
  const a = y1l - l.exitDepth * v1k;
  const b = y2l - l.exitDepth * v2k;
  const width = Math.abs(b) / l.exitRadius;
  const v1l = v1k - l.power * y1l;
  const v2l = v2k - l.power * y2l;
  const y1c = y1l + c.gap * v1l;
  const y2c = y2l + c.gap * v2l;
  const v1 = v1l - c.power * y1c;
  const v2 = v2l - c.power * y2c;
  const y1 = y1c + frontGap * v1;
  const y2 = y2c + frontGap * v2;
  const magnification = Math.abs(v2);
  const workingDistance = -y2 / v2;
  const slope = b * v1 - a * v2;
  return {
    sharpPlane: workingDistance > 0 ? 'in front' : 'inside',
    magnification,
    upright: v2 > 0,
    workingDistance,
    focusDistance: length + workingDistance,
    fieldWidth: camera.sensorWidth / magnification,
    fieldHeight: camera.sensorHeight / magnification,
    effectiveFNumber: width / 2,
    limitedBy: l.part,
    fNumber: l.fNumber,
    lightLoss: 2 * Math.log2(width / 2 / l.fNumber),
    apertureControl: l.control,
    inverseEntrancePupilDistance: (v2 * slope) / b,
    pupil: {
      entrancePupil: (2 * Math.abs(b / slope)) / width,
      entrancePupilDistance: workingDistance + (b * y1 - a * y2) / slope,
    },
  };
}

/** Measures the engine on a chain of camera, converter, ring, lens and close-up lens, a thousand of each. */
export function rigSpeed(): RigSpeed {
  const chains = Array.from({ length: count }, (_, index) => chain(10 + index / 100));
  const rigs = chains.map(assembleRig);
  const sum = (solved: ReturnType<typeof solveRig>) =>
    solved.sharpPlane === 'in front' ? solved.workingDistance + solved.effectiveFNumber : NaN;
  // In turn, so that all three meet the same machine; the median of many rounds does not mind when it is busy.
  const asked = Array.from({ length: 64 }, (_, index) => (index + 1) / 65);
  const unit = asked.map((at) => tracedChain(at, asAWhole));
  const before = asked.map((at) => tracedChain(at));
  const rounds = Array.from({ length: 61 }, (_, round) => ({
    hand: secondsEach(rigs, (rig) => {
      const solved = byHand(rig);
      return solved.workingDistance + solved.effectiveFNumber;
    }),
    engine: secondsEach(rigs, (rig) => sum(solveRig(rig))),
    fromParts: secondsEach(chains, (parts) => sum(solveRig(assembleRig(parts)))),
    unit: secondsEach(unit, (parts) => sum(solveRig(assembleRig(parts)))),
    // Never the same setting twice, or it would be one that is kept.
    traced: secondsEach(
      asked,
      (() => {
        let asking = 0;
        return (at: number) => sum(solveRig(assembleRig(tracedChain(at * 0.99 + 1e-7 * (++asking + 2560 * round)))));
      })(),
    ),
    tracedBefore: secondsEach(before, (parts) => sum(solveRig(assembleRig(parts)))),
  }));
  return {
    solvedPerSecond:
      1 /
      percentile(
        rounds.map(({ engine }) => engine),
        0.5,
      ),
    fromPartsPerSecond:
      1 /
      percentile(
        rounds.map(({ fromParts }) => fromParts),
        0.5,
      ),
    timesByHand: percentile(
      rounds.map(({ engine, hand }) => engine / hand),
      0.5,
    ),
    timesTraced: percentile(
      rounds.map((round) => round.traced / round.unit),
      0.5,
    ),
    timesTracedBefore: percentile(
      rounds.map((round) => round.tracedBefore / round.unit),
      0.5,
    ),
  };
}
