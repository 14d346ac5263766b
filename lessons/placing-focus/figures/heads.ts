import { mostTurned } from '#core/picture/turned-scene.ts';
import type { View } from '#core/picture/view.ts';
import type { PictureJob } from '#site/figures/picture/job.ts';
import { subjects } from '#site/state/subjects.ts';

/** Of the hoverfly's head: how far each eye is from the middle, and how high its round top, a little below its highest place. */
const eye = { aside: 0.74, height: 1.68 };
/** Pixels that a sheet shows well, and the least that show a head. */
const [most, least] = [480, 48];
/** Pixels side by side on a sensor. */
const sensorColumns = 6000;
/** The head with a little around it, mm; its eyes in the middle. */
const shown = 1.02 * subjects['hoverfly-head'].width;
const centre = { x: 0, y: -0.12 };

/** What of the bench a head is seen through. */
export interface HeadLens {
  readonly magnification: number;
  readonly pupilMagnification: number;
  readonly entrancePupilDistance: number;
  readonly pixelPitch: number;
}

/** How one picture differs from the others. */
export interface HeadShot {
  readonly turned: number;
  readonly effectiveFNumber: number;
  readonly focusOffset: number;
  /** On the eye that is nearer to the camera, or midway between both. */
  readonly at: 'nearer eye' | 'midway';
}

/** Whether a head turned so far can be shown. */
export const canTurn = (tilt: number) => tilt <= mostTurned * (1 + 1e-9);
/** Whether the whole head is in front of such a lens. */
export const isInFront = ({ entrancePupilDistance }: HeadLens) =>
  entrancePupilDistance > 2 * subjects['hoverfly-head'].top;

/** The head of a hoverfly: each pixel one of the sensor's, or as many as make it fit. */
export function headJob(lens: HeadLens, { turned, effectiveFNumber, focusOffset, at }: HeadShot): PictureJob {
  const { magnification, pixelPitch, ...pupil } = lens;
  const across = (shown * magnification) / pixelPitch;
  const each = Math.max(1, Math.min(Math.round(sensorColumns / most), Math.ceil(across / most)));
  const columns = Math.round(Math.min(most, Math.max(least, across / each)));
  const rise = at === 'midway' ? 0 : eye.aside * Math.tan(turned);
  const view: View = {
    magnification,
    pupilMagnification: pupil.pupilMagnification,
    entrancePupilDistance: pupil.entrancePupilDistance,
    effectiveFNumber,
    focusHeight: eye.height + rise + focusOffset,
    pitch: each * pixelPitch,
    columns,
    rows: Math.round(0.86 * columns),
    colour: true,
  };
  return { subject: 'hoverfly-head', seed: 1, centre, turned, view };
}

/**
 * Where the sharp plane passes through a plane that holds both eyes, a share of the picture's width from its left edge: an upright line. Undefined
 * where it passes beside the picture, or nowhere, because both lie alike.
 */
export function planeInPicture({ turned = 0, view }: PictureJob): number | undefined {
  if (turned === 0) return undefined;
  const aside = (view.focusHeight - eye.height) / Math.tan(turned);
  const share = 0.5 + ((aside - centre.x) * view.magnification) / (view.columns * view.pitch);
  return share > 0 && share < 1 ? share : undefined;
}
