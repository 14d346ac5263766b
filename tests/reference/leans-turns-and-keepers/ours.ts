import { fNumberForDepth } from '#core/depth/f-number-for-depth.formula.ts';
import { focusOffsetOfTurn } from '#core/depth/focus-offset-of-turn.formula.ts';
import { sharpWidthOfTilt } from '#core/depth/sharp-width-of-tilt.formula.ts';
import { subjectDepthOfTilt } from '#core/depth/subject-depth-of-tilt.formula.ts';
import { keeperShare } from '#core/exposure/keeper-share.formula.ts';

type Lean = Parameters<typeof sharpWidthOfTilt>[0];
type Turn = Parameters<typeof focusOffsetOfTurn>[0];
type Depth = Parameters<typeof fNumberForDepth>[0];
interface Limits {
  readonly from: readonly number[];
  readonly to: readonly number[];
}

type Bar = Omit<Lean, 'subjectWidth'> & { readonly barLength: number };

export function ours(given: Bar | Lean | Turn | Depth | Limits) {
  if ('barLength' in given)
    return {
      subjectDepth: subjectDepthOfTilt({ ...given, subjectWidth: given.barLength }),
      // Longer than the bar, so that the depth decides and not the length.
      sharpSubjectWidth: sharpWidthOfTilt({ ...given, subjectWidth: 2 * given.barLength }),
    };
  if ('subjectTilt' in given)
    return { subjectDepth: subjectDepthOfTilt(given), sharpSubjectWidth: sharpWidthOfTilt(given) };
  if ('turnAngle' in given) return { focusOffset: focusOffsetOfTurn(given) };
  if ('circleOfConfusion' in given) return { fNumber: fNumberForDepth(given) };
  return { share: given.from.map((from, at) => shareBetween(from, given.to[at]!)) };
}

/** Sway 1; the depth of field between both limits, its sharp plane in their middle, and the mean where the deviates have it, at 0. */
function shareBetween(from: number, to: number): number {
  const half = (to - from) / 2;
  return keeperShare({ nearLimit: half, farLimit: half, sway: 1, focusOffset: -(from + to) / 2 });
}
