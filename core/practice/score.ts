import type { Verdict } from './answer.ts';
import { isSeed } from './seed.ts';

/** How a learner stands in one family; plain data that can be stored. */
export interface FamilyScore {
  /** Number of the problem worked last. */
  readonly seed: number;
  /** Answers to it that were marked. */
  readonly tries: number;
  /** It has been answered rightly, or its working has been looked at: more answers no longer count. */
  readonly closed: boolean;
  /** Problems with at least one marked answer or their working looked at. */
  readonly worked: number;
  /** Of these, right at the first answer. */
  readonly atOnce: number;
  /** Of these, right at a later answer. */
  readonly later: number;
}

/** Scores by family. A family that is missing has not been begun. */
export type Progress = Readonly<Record<string, FamilyScore>>;

/** What counts as an event: an answer was marked, or the working was looked at. What was not ready to mark is none. */
export type PracticeEvent = Verdict['kind'] | 'working-shown';

/** *progress* after an event at the problem *seed* of *family*; the same object where nothing counts any more. */
export function progressAfter(
  progress: Progress,
  { family, seed, event }: { readonly family: string; readonly seed: number; readonly event: PracticeEvent },
): Progress {
  const before = Object.hasOwn(progress, family) ? progress[family] : undefined;
  const isSame = before?.seed === seed;
  if (isSame && before.closed) return progress;
  const right = event === 'right';
  const tries = (isSame ? before.tries : 0) + (event === 'working-shown' ? 0 : 1);
  const score: FamilyScore = {
    seed,
    tries,
    closed: right || event === 'working-shown',
    worked: (before?.worked ?? 0) + (isSame ? 0 : 1),
    atOnce: (before?.atOnce ?? 0) + (right && tries === 1 ? 1 : 0),
    later: (before?.later ?? 0) + (right && tries > 1 ? 1 : 0),
  };
  return { ...progress, [family]: score };
}

/** True for what {@link progressAfter} can build on: guards what comes out of storage. */
export function isProgress(value: unknown): value is Progress {
  return (
    typeof value === 'object' && value !== null && !Array.isArray(value) && Object.values(value).every(isFamilyScore)
  );
}

function isFamilyScore(value: unknown): value is FamilyScore {
  if (typeof value !== 'object' || value === null) return false;
  const { seed, tries, closed, worked, atOnce, later } = value as Record<string, unknown>;
  return (
    isSeed(seed) &&
    [tries, worked, atOnce, later].every((count) => Number.isSafeInteger(count) && (count as number) >= 0) &&
    typeof closed === 'boolean' &&
    (atOnce as number) + (later as number) <= (worked as number)
  );
}
