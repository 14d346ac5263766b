import { framesBeforeDeadline } from '#core/stack/frames-before-deadline.formula.ts';
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

export function ours(given: Schedule | Fence) {
  if ('posts' in given) return { length: stackTravel({ frameCount: given.posts, frameStep: given.spacing }) };
  return {
    stackTime: stackTime(given),
    stackTravel: stackTravel(given),
    framesBeforeDeadline: framesBeforeDeadline(given),
  };
}
