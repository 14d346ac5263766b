import { columns, rows } from '#site/figures/picture/framing.ts';
import type { PictureJob } from '#site/figures/picture/job.ts';

/** What the picture follows from, mm. */
export interface PictureState {
  readonly subject: string;
  readonly magnification: number;
  readonly effectiveFNumber: number;
  readonly pupilMagnification: number;
  readonly wavelength: number;
  readonly pixelPitch: number;
}

/** Where each subject is focused, mm above its deepest place, and which place of it is in the middle, mm. */
const framings: Readonly<Record<string, { readonly focusHeight: number; readonly centre: { x: number; y: number } }>> =
  {
    stamp: { focusHeight: 0.2, centre: { x: -3.6, y: -1.5 } },
    'hoverfly-head': { focusHeight: 1.7, centre: { x: 0, y: 0 } },
    'bay-leaf': { focusHeight: 3.3, centre: { x: 2, y: 0.8 } },
    'slanted-scale': { focusHeight: 8, centre: { x: 0, y: 0 } },
  };

/** Diffraction does not ask for the focal length; perspective does, and takes one that is usual. */
const focalLength = 100;

/** The middle of the frame, as many pixels as a sheet has: each is one of the sensor's. */
export function pictureJob({ subject, pixelPitch, ...optics }: PictureState): PictureJob {
  const { focusHeight, centre } = framings[subject] ?? { focusHeight: 0, centre: { x: 0, y: 0 } };
  return {
    subject,
    seed: 1,
    centre,
    view: {
      ...optics,
      entrancePupilDistance: focalLength * (1 / optics.magnification + 1 / optics.pupilMagnification),
      focusHeight,
      pitch: pixelPitch,
      columns,
      rows,
      colour: true,
    },
  };
}
