import type { View } from '#core/picture/view.ts';
import { columns, pitchFor, rows } from './framing.ts';
import type { PictureJob } from './job.ts';
import { photographed, type Photographed } from './photographed.ts';
import type { StackJob } from './stack-job.ts';

type Optics = Pick<View, 'magnification' | 'effectiveFNumber' | 'pupilMagnification' | 'entrancePupilDistance'>;

/** What the pictures of a planned stack follow from; lengths in mm. */
export interface StackPicture extends Optics, Omit<StackJob, 'frameStep' | 'firstHeight'> {
  readonly subject: Photographed;
  /** Of the subject that shall be seen. */
  readonly width: number;
  readonly sensorWidth: number;
  readonly pixelPitch: number;
  readonly nearLimit: number;
  /** undefined where one frame shows it all. */
  readonly frameStep: StackJob['frameStep'] | undefined;
}

/**
 * The frames of a plan, merged or one of them: the first is focused so that its near limit lies on the nearest part of the subject, the
 * others deeper and deeper. Where there is nothing to stack, one frame of the subject's middle.
 */
export function stackPicture(state: StackPicture): PictureJob {
  const { subject, width, sensorWidth, pixelPitch, nearLimit, ...planned } = state;
  const { magnification, effectiveFNumber, pupilMagnification, entrancePupilDistance, frameStep, ...stack } = planned;
  const { top } = photographed[subject];
  const firstHeight = frameStep === undefined ? top / 2 : top - nearLimit;
  return {
    subject,
    seed: 1,
    view: {
      magnification,
      effectiveFNumber,
      pupilMagnification,
      entrancePupilDistance,
      focusHeight: firstHeight,
      pitch: pitchFor({ magnification, sensorWidth, pixelPitch, width }),
      columns,
      rows,
      colour: true,
    },
    ...(frameStep === undefined ? {} : { stack: { ...stack, frameStep, firstHeight } }),
  };
}
