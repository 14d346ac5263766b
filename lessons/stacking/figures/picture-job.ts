import { columns, pitchFor, rows } from '#site/figures/picture/framing.ts';
import type { PictureJob } from '#site/figures/picture/job.ts';
import { subjects, type SubjectSlug } from './subjects.ts';

/** What the pictures of a stack follow from; lengths in mm. */
export interface PictureState {
  readonly subject: SubjectSlug;
  readonly magnification: number;
  readonly effectiveFNumber: number;
  readonly pupilMagnification: number;
  readonly entrancePupilDistance: number;
  readonly focalLength: number;
  readonly sensorWidth: number;
  readonly pixelPitch: number;
  readonly nearLimit: number;
  /** undefined where one frame shows it all. */
  readonly frameStep: number | undefined;
  readonly frameCount: number;
  /** Frames finished in time. */
  readonly taken: number;
  readonly by: 'rail' | 'focus-ring';
  readonly shown: 'merged' | 'first' | 'middle';
}

/** The stack as planned, merged or one frame of it; undefined for a subject of which there is no picture. */
export function pictureJob(state: PictureState): PictureJob | undefined {
  const subject = subjects[state.subject];
  if (!('top' in subject)) return undefined;
  const { magnification, effectiveFNumber, pupilMagnification, entrancePupilDistance, frameStep, frameCount } = state;
  const firstHeight = frameStep === undefined ? subject.top / 2 : subject.top - state.nearLimit;
  const only = { merged: undefined, first: 0, middle: frameCount >> 1 }[state.shown];
  return {
    subject: state.subject,
    seed: 1,
    view: {
      magnification,
      effectiveFNumber,
      pupilMagnification,
      entrancePupilDistance,
      focusHeight: firstHeight,
      pitch: pitchFor({ ...state, width: 1.15 * subject.width }),
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
            scale: 'known',
            lost: Array.from({ length: frameCount - state.taken }, (_, index) => state.taken + index),
            ...(only === undefined ? {} : { only }),
          },
        }),
  };
}
