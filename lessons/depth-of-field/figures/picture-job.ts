import { columns, pitchFor, rows } from '#site/figures/picture/framing.ts';
import { photographed, type Photographed } from '#site/figures/picture/photographed.ts';
import type { PictureJob } from '#site/figures/picture/job.ts';

/** What the picture follows from, mm. */
export interface PictureState {
  readonly subject: Photographed;
  readonly magnification: number;
  readonly effectiveFNumber: number;
  readonly pupilMagnification: number;
  readonly entrancePupilDistance: number;
  readonly sensorWidth: number;
  readonly pixelPitch: number;
}

/** Where each subject is focused, mm above its deepest place: on what a photographer would choose, the scale on its zero. */
const focusHeights: Readonly<Record<Photographed, number>> = {
  'slanted-scale': 8,
  'drawing-pin': 4,
  'bay-leaf': 4,
  'hoverfly-head': 1.6,
  'drop-on-wire': 11.8,
  'frost-crystal': 1.25,
  stamp: 0.1,
};

/** The whole frame that the sensor records, or the middle of it where the subject would be lost in it. */
export function pictureJob({ subject, sensorWidth, pixelPitch, ...view }: PictureState): PictureJob {
  return {
    subject,
    seed: 1,
    view: {
      ...view,
      focusHeight: focusHeights[subject],
      pitch: pitchFor({ ...view, sensorWidth, pixelPitch, width: 1.3 * photographed[subject].width }),
      columns,
      rows,
      colour: true,
    },
  };
}
