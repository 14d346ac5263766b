import type { PictureJob } from '#site/figures/picture/job.ts';
import { photographed } from '#site/figures/picture/photographed.ts';
import { stackPicture, type StackPicture } from '#site/figures/picture/stack-picture.ts';

/** The planned frames, merged: the subject with a margin around it, as far as the sensor takes it in. */
export function pictureJob(state: Omit<StackPicture, 'width'>): PictureJob {
  return stackPicture({ ...state, width: 1.2 * photographed[state.subject].width });
}
