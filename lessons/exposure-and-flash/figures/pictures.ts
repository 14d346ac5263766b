import { viewOfFlyHead } from '#site/figures/picture/fly-head.ts';
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

/** Longer streaks are an even smear from edge to edge: they are drawn so many pictures long. */
const longest = 3;

/** The flash’s picture of the fly with that of the light already there. */
export function jobOf({ flashMotionBlur, ambientMotionBlur, ...given }: PicturedWith): PictureJob {
  const { magnification, effectiveFNumber, pupilMagnification } = given;
  const view = viewOfFlyHead({
    magnification,
    effectiveFNumber,
    pupilMagnification,
    entrancePupilDistance: pupilToSubject(magnification, pupilMagnification),
  });
  const drawn = (streak: number) => Math.min(streak, longest * view.columns * view.pitch);
  return {
    subject: 'hoverfly-head',
    seed: 1,
    view: { ...view, motionBlur: { width: drawn(flashMotionBlur), angle: 0 } },
    ambient: {
      share: given.ambientShare,
      motionBlur: drawn(ambientMotionBlur),
      flashBehind: 2 ** -given.backgroundUnderexposure,
    },
  };
}
