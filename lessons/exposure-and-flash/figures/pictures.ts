import type { PictureJob } from '#site/figures/picture/job.ts';
import { pupilToSubject } from './gear.ts';

/** What of the bench a picture is made from; lengths in mm. */
export interface PicturedWith {
  readonly magnification: number;
  readonly effectiveFNumber: number;
  readonly pupilMagnification: number;
  readonly flashMotionBlur: number;
  readonly ambientMotionBlur: number;
  readonly ambientShare: number;
  readonly backgroundUnderexposure: number;
}

/** The head of the fly over half the height of the picture: what that shows of the scene, and the place in focus, mm. */
const seen = { height: 4.4, focusHeight: 1.7 };
const [columns, rows] = [300, 300];

/** Longer streaks are an even smear from edge to edge: a few pictures long they are drawn as long as this, mm on the sensor a pixel. */
const longest = 3 * columns;

/** The flash’s picture of the fly with that of the light already there. */
export function jobOf({ flashMotionBlur, ambientMotionBlur, ...given }: PicturedWith): PictureJob {
  const { magnification, effectiveFNumber, pupilMagnification } = given;
  const pitch = (magnification * seen.height) / rows;
  const drawn = (streak: number) => Math.min(streak, longest * pitch);
  return {
    subject: 'hoverfly-head',
    seed: 1,
    view: {
      magnification,
      effectiveFNumber,
      pupilMagnification,
      entrancePupilDistance: pupilToSubject(magnification, pupilMagnification),
      focusHeight: seen.focusHeight,
      pitch,
      columns,
      rows,
      colour: true,
      motionBlur: { width: drawn(flashMotionBlur), angle: 0 },
    },
    ambient: {
      share: given.ambientShare,
      motionBlur: drawn(ambientMotionBlur),
      flashBehind: 2 ** -given.backgroundUnderexposure,
    },
  };
}
