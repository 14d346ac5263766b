import { shutterOrFlash, type LightWanted } from '#core/exposure/shutter-or-flash.ts';
import { lowestOf } from './light-at.ts';
import { isUnderWeakest } from './in-words.ts';
import { oneFrameOrStack, type FramesWanted } from '#core/stack/one-frame-or-stack.ts';

/** What the plan is judged by, base units. */
export interface Planned {
  readonly workingDistance: number;
  readonly flightDistance: number;
  readonly subjectDepth: number;
  readonly magnification: number;
  readonly effectiveFNumber: number;
  readonly circleOfConfusion: number;
  readonly wavelength: number;
  readonly frameCount: number;
  readonly inTimeFrameCount: number;
  readonly ambientExposureTime: number;
  readonly slowestExposureTime: number;
  readonly neededFlashPower: number;
  readonly flashDistance: number;
  readonly sourceSize: number;
  /** The lens looks through what shines. */
  readonly hasHole?: boolean;
}

export interface Decisions {
  readonly hasRoom: boolean;
  readonly frames: FramesWanted;
  readonly light: LightWanted;
  /** The flash would have to give less than it can. */
  readonly isOverexposed?: true;
  /** Where the light cannot stand: nearer than anything may come, or in the lens’s way. */
  readonly lightStands?: 'too-near' | 'in-the-way';
  /** The chain gives nothing to decide by. */
  readonly isNone?: true;
}

/** Where nothing is sharp. */
export const nothingSharp: Decisions = { hasRoom: false, frames: 'open-up', light: 'higher-iso', isNone: true };

export function decisionsOf(plan: Planned): Decisions {
  const light = shutterOrFlash(plan);
  const stands = light === 'ambient' ? undefined : lightStands(plan);
  return {
    hasRoom: plan.workingDistance >= plan.flightDistance,
    frames: oneFrameOrStack(plan),
    light,
    ...(light === 'flash' && isUnderWeakest(plan.neededFlashPower) && { isOverexposed: true }),
    ...(stands && { lightStands: stands }),
  };
}

/** Square to its way to the subject, the middle of the light is its nearest part and its lower end the one that comes to the axis. */
function lightStands({ flashDistance, sourceSize, flightDistance, hasHole }: Planned): Decisions['lightStands'] {
  if (flashDistance < flightDistance) return 'too-near';
  return lowestOf({ flashDistance, sourceSize }) < 0 && !hasHole ? 'in-the-way' : undefined;
}

/** Whether one goes on to the next question. */
export const areGood = ({ frames }: Decisions) => frames === 'one-frame' || frames === 'stack';

/** What is said of the frames in a drawing. */
export function framesSaid({ frames, isNone }: Decisions, count: string, taken: string): string {
  if (isNone) return 'nothing is sharp';
  return {
    'one-frame': 'one frame will do',
    'close-further': 'close further: one will do',
    'open-up': 'closed too far: open up',
    stack: `stack of ${count}`,
    'too-slow': `in time: ${taken}`,
  }[frames];
}
