import { flatReceptorConstants, reflectedLightConstants } from '#core/exposure/metering-constants.ts';
import type { PictureJob } from '#site/figures/picture/job.ts';

/** What of the bench a picture is made from; lengths in mm. */
export interface PicturedThrough {
  readonly magnification: number;
  readonly effectiveFNumber: number;
  readonly pupilMagnification: number;
  readonly entrancePupilDistance: number;
  readonly pixelPitch: number;
  readonly readNoise: number;
}

/** One eye of the fly: where its middle is in the scene, its height across the picture, and the place that is focused on, mm. */
const eye = { x: 0.74, y: -0.12, height: 1.96, focusHeight: 1.6 };

/** A white surface frees so many times the electrons of a mid-tone: C/(π K). */
const whiteOverMidTone = flatReceptorConstants.common / (Math.PI * reflectedLightConstants.common);

const [fewest, most] = [24, 240];

/**
 * The eye, each pixel of the picture one of the sensor's: half as high as the picture where the sensor has few pixels for it, which are
 * shown larger then, else as much of it as so many pixels take in.
 */
export function jobOf(view: PicturedThrough, streak: number, electrons: number): PictureJob {
  const { pixelPitch: pitch, ...lens } = view;
  const across = (2 * eye.height * view.magnification) / pitch;
  const rows = Math.round(Math.min(most, Math.max(fewest, across)));
  return {
    subject: 'hoverfly-head',
    seed: 1,
    centre: { x: eye.x, y: eye.y },
    view: {
      ...lens,
      pitch,
      focusHeight: eye.focusHeight,
      columns: Math.round(1.15 * rows),
      rows,
      colour: true,
      motionBlur: { width: streak, angle: 0 },
      electronsAtWhite: whiteOverMidTone * electrons,
    },
  };
}
