import { framesBeforeDeadline } from '#core/stack/frames-before-deadline.formula.ts';
import { stackTimeInTurn } from '#core/stack/stack-time-in-turn.formula.ts';
import { stackTime } from '#core/stack/stack-time.formula.ts';
import { stackTravel } from '#core/stack/stack-travel.formula.ts';

interface Schedule {
  frameCount: number;
  exposureTime: number;
  settlingTime: number;
  recyclingTime: number;
  frameStep: number;
  timeLimit: number;
}

interface Fence {
  posts: number;
  spacing: number;
}

interface Turn {
  frames: number;
  exposure: number;
  settling: number;
  recycling: number;
}

export function ours(given: Schedule | Fence | Turn) {
  if ('posts' in given) return { length: stackTravel({ frameCount: given.posts, frameStep: given.spacing }) };
  if ('frames' in given) {
    const { frames, exposure, settling, recycling } = given;
    const waits = { settlingTime: settling, recyclingTime: recycling };
    return { timeInTurn: stackTimeInTurn({ frameCount: frames, exposureTime: exposure, ...waits }) };
  }
  return {
    stackTime: stackTime(given),
    stackTravel: stackTravel(given),
    framesBeforeDeadline: framesBeforeDeadline(given),
  };
}
