import type { PictureJob } from '#site/figures/picture/job.ts';
import { photographed } from '#site/figures/picture/photographed.ts';
import { stackPicture, type StackPicture } from '#site/figures/picture/stack-picture.ts';
import type { SubjectSlug } from './subjects.ts';

/** What the pictures of a stack follow from; lengths in mm. */
export interface PictureState extends Omit<StackPicture, 'subject' | 'width' | 'scale' | 'lost' | 'only'> {
  readonly subject: SubjectSlug;
  /** Frames finished in time. */
  readonly taken: number;
  readonly shown: 'merged' | 'first' | 'middle';
}

/** The stack as planned, merged or one frame of it; undefined for a subject of which there is no picture. */
export function pictureJob({ subject, taken, shown, ...stack }: PictureState): PictureJob | undefined {
  if (subject === 'jumping-spider') return undefined;
  const { frameCount } = stack;
  return stackPicture({
    ...stack,
    subject,
    width: 1.15 * photographed[subject].width,
    scale: 'known',
    lost: Array.from({ length: frameCount - taken }, (_, index) => taken + index),
    ...(shown === 'merged' ? {} : { only: shown === 'first' ? 0 : frameCount >> 1 }),
  });
}
