import { columns, pitchFor, rows } from '#site/figures/picture/framing.ts';
import type { PictureJob } from '#site/figures/picture/job.ts';

/** What the picture follows from, mm. */
export interface PictureState {
  readonly subject: string;
  readonly magnification: number;
  readonly effectiveFNumber: number;
  readonly pupilMagnification: number;
  readonly entrancePupilDistance: number;
  readonly sensorWidth: number;
  readonly pixelPitch: number;
}

/** Where each subject is focused, mm above its deepest place: on what a photographer would choose, the scale on its zero. And how wide it is. */
const framings: Readonly<Record<string, { readonly focusHeight: number; readonly width: number }>> = {
  'slanted-scale': { focusHeight: 8, width: 24 },
  'drawing-pin': { focusHeight: 4, width: 12 },
  'bay-leaf': { focusHeight: 4, width: 36 },
  'hoverfly-head': { focusHeight: 1.6, width: 3.2 },
  'drop-on-wire': { focusHeight: 11.8, width: 7 },
  'frost-crystal': { focusHeight: 1.25, width: 4.6 },
  stamp: { focusHeight: 0.1, width: 30 },
};

/** The whole frame that the sensor records, or the middle of it where the subject would be lost in it. */
export function pictureJob({ subject, sensorWidth, pixelPitch, ...view }: PictureState): PictureJob {
  const { focusHeight, width } = framings[subject] ?? { focusHeight: 0, width: Infinity };
  return {
    subject,
    seed: 1,
    view: {
      ...view,
      focusHeight,
      pitch: pitchFor({ ...view, sensorWidth, pixelPitch, width: 1.3 * width }),
      columns,
      rows,
      colour: true,
    },
  };
}
