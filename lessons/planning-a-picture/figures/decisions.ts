import { shutterOrFlash, type LightWanted } from '#core/exposure/shutter-or-flash.ts';
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
}

export interface Decisions {
  readonly hasRoom: boolean;
  readonly frames: FramesWanted;
  readonly light: LightWanted;
  /** The chain gives nothing to decide by. */
  readonly isNone?: true;
}

/** Where nothing is sharp. */
export const nothingSharp: Decisions = { hasRoom: false, frames: 'open-up', light: 'higher-iso', isNone: true };

export function decisionsOf(plan: Planned): Decisions {
  return {
    hasRoom: plan.workingDistance >= plan.flightDistance,
    frames: oneFrameOrStack(plan),
    light: shutterOrFlash(plan),
  };
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
