import { subjects, type SubjectSlug } from '#site/state/subjects.ts';
import type { PictureJob } from './job.ts';
import type { StackJob } from './stack-job.ts';
import { viewOfSubject, type BenchWith, type OfFrame } from './view-of.ts';

/** What of a stack is not the camera's. */
export interface StackPicture extends Omit<StackJob, 'frameStep' | 'firstHeight' | 'focalLength'> {
  readonly subject: SubjectSlug;
  /** How many times as wide as the subject the picture is. */
  readonly margin: number;
  /** undefined where one frame shows it all. */
  readonly frameStep: StackJob['frameStep'] | undefined;
}

/**
 * The frames of a plan, merged or one of them: the first is focused so that its near limit lies on the nearest part of the subject, the
 * others deeper and deeper. Where there is nothing to stack, one frame of the subject's middle.
 */
export function stackPicture(
  bench: BenchWith<OfFrame | 'near-limit' | 'focal-length'>,
  { subject, margin, frameStep, ...stack }: StackPicture,
): PictureJob {
  const { top } = subjects[subject];
  const { nearLimit, focalLength } = bench.named('near-limit', 'focal-length');
  const firstHeight = frameStep === undefined ? top / 2 : top - nearLimit;
  return {
    subject,
    seed: 1,
    view: viewOfSubject(bench, subject, { margin, focusHeight: firstHeight }),
    ...(frameStep === undefined ? {} : { stack: { ...stack, focalLength, frameStep, firstHeight } }),
  };
}
