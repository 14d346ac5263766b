import { columns, pitchFor, rows } from '#site/figures/picture/framing.ts';
import type { PictureJob } from '#site/figures/picture/job.ts';
import { subjects, type SubjectSlug } from './subjects.ts';

/** What a picture of a stack follows from; lengths in mm, heights from the deepest place of the subject. */
export interface StackState {
  readonly subject: SubjectSlug;
  readonly magnification: number;
  readonly effectiveFNumber: number;
  readonly pupilMagnification: number;
  readonly entrancePupilDistance: number;
  readonly focalLength: number;
  readonly pixelPitch: number;
  readonly sensorWidth: number;
  readonly nearLimit: number;
  /** undefined where one frame shows it all. */
  readonly frameStep: number | undefined;
  readonly frameCount: number;
  readonly by: 'rail' | 'focus-ring';
  readonly scale: 'known' | 'estimated' | 'uncorrected';
  readonly lost: readonly number[];
}

/**
 * The frames that a plan makes, to be merged: the first focused so that its near limit lies on the nearest part of the subject, the others deeper and deeper.
 *
 * A pixel of the picture is a whole number of the sensor’s, so many that the subject fits in, and no more than the sensor has.
 */
export function pictureJob(state: StackState): PictureJob {
  const { magnification, frameStep, frameCount } = state;
  const { width, top } = subjects[state.subject];
  const firstHeight = frameStep === undefined ? top / 2 : top - state.nearLimit;
  return {
    subject: state.subject,
    seed: 1,
    view: {
      magnification,
      effectiveFNumber: state.effectiveFNumber,
      pupilMagnification: state.pupilMagnification,
      entrancePupilDistance: state.entrancePupilDistance,
      focusHeight: firstHeight,
      pitch: pitchFor({ ...state, width: 1.2 * width }),
      columns,
      rows,
      colour: true,
    },
    ...(frameStep === undefined
      ? {}
      : {
          stack: {
            frameStep,
            frameCount,
            firstHeight,
            by: state.by,
            focalLength: state.focalLength,
            scale: state.scale,
            lost: state.lost,
          },
        }),
  };
}
