import { keeperScatter } from '#core/exposure/keeper-scatter.ts';
import { dealtFrames } from './dealt.ts';
import { keepersOf, keepersSoFar, type Rocking } from './rocking-layout.ts';

/** What the sheet says of the frames that are drawn on it. */
export interface Counted {
  /** Of those that are seen. */
  readonly kept: string;
  /** Of all that were taken so far, and what was to be expected, in short lines. */
  readonly soFar: readonly string[];
  /** Of those that are seen, two stops further on. */
  readonly keptClosed: string;
}

/** As paper has it: nothing falls there any more, and of a deal that is under way all is dealt. */
export const wholeDeal = ({ taken: _, ...rocking }: Rocking): Rocking => rocking;

/**
 * Chance against the sum, in words.
 *
 * @param share of all frames that is to be expected, 0 to 1, and the same as it prints
 * @param closedTo the f-number two stops further on, as it prints
 */
export function counted(
  rocking: Rocking,
  {
    share,
    shareInWords,
    closedTo,
  }: { readonly share: number; readonly shareInWords: string; readonly closedTo: string },
): Counted {
  const { turn = 0, taken = dealtFrames } = rocking;
  const frames = dealtFrames * turn + taken;
  const scatter = keeperScatter({ frames, keeperShare: share });
  // As many digits as the scatter leaves a meaning.
  const print = (count: number) => count.toFixed(scatter < 2.95 ? 1 : 0);
  const expected = `computed: ${shareInWords}, so ${print(share * frames)} ± ${print(scatter)} of ${frames}`;
  return {
    kept: `${keepersOf(rocking, rocking)} of ${taken < dealtFrames ? '' : 'these '}${taken} in focus`,
    // Whatever is set otherwise is set for all frames, those that were taken before too.
    soFar:
      turn === 0 ? [expected] : [`of all ${frames}, as set now: ${keepersSoFar(rocking, rocking)} in focus`, expected],
    keptClosed: `dashed, ${closedTo}: ${keepersOf(rocking, rocking.closed)} of ${taken}`,
  };
}
