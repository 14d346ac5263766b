import { backgroundBlur } from '#core/depth/background-blur.formula.ts';
import { backgroundWidth } from '#core/depth/background-width.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { fieldWidth } from '#core/gaussian/field-width.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistance } from '#core/gaussian/working-distance.formula.ts';
import type { Named } from '#core/quantity/formula.ts';
import type { PictureJob } from '#site/figures/picture/job.ts';
import { roundStep } from '#site/state/rungs.ts';
import type { LensInView } from './chains.ts';

type Given = LensInView & Readonly<Named<'magnification' | 'f-number' | 'sensor-width' | 'background-distance'>>;

/** What one lens makes of subject and background. */
export interface View extends Readonly<
  Named<'working-distance' | 'entrance-pupil' | 'entrance-pupil-distance' | 'background-width' | 'background-blur'>
> {
  readonly effectiveFNumber: number;
}

/** The lens at this magnification: all that pictures and drawings of it need. */
export function viewThrough(given: Given): View {
  const seen = {
    ...given,
    fieldWidth: fieldWidth(given),
    subjectDistance: subjectDistance(given),
    entrancePupil: entrancePupil(given),
    entrancePupilDistance: entrancePupilDistance(given),
  };
  return {
    workingDistance: workingDistance(seen),
    entrancePupil: seen.entrancePupil,
    entrancePupilDistance: seen.entrancePupilDistance,
    backgroundWidth: backgroundWidth(seen),
    backgroundBlur: backgroundBlur(seen),
    effectiveFNumber: effectiveFNumber(given),
  };
}

/** So many posts, or up to two and a half times as many, in the widest of the pictures. */
const fewestPosts = 6;

/** From post to post, mm: a round number that suits the widest view. */
export const spacingFor = (widest: number) => roundStep(widest / fewestPosts / 2.5);

/** Of the picture's width. */
const coinShare = 1 / 4;
const [columns, rows] = [360, 240];

/**
 * The picture of a coin in the sharp plane with posts behind it. The background is drawn where a pupil at infinity would have it to look
 * alike: nothing of a far one has to be drawn in its size.
 */
export function jobOf(
  { entrancePupilDistance: u, effectiveFNumber: works }: View,
  given: Pick<Given, 'magnification' | 'pupilMagnification' | 'sensorWidth' | 'backgroundDistance'>,
  spacing: number,
): PictureJob {
  const { magnification, pupilMagnification, sensorWidth, backgroundDistance } = given;
  const shrunk = u / (u + backgroundDistance);
  const behind = backgroundDistance * shrunk;
  return {
    subject: 'coin-before-posts',
    coinBeforePosts: { coinWidth: (coinShare * sensorWidth) / magnification, postSpacing: spacing * shrunk, behind },
    seed: 1,
    view: {
      magnification,
      effectiveFNumber: works,
      pupilMagnification,
      entrancePupilDistance: Infinity,
      focusHeight: behind,
      pitch: sensorWidth / columns,
      columns,
      rows,
      colour: true,
    },
  };
}
