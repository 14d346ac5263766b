import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { holeOfRing } from '#core/light/lights-around-ball.ts';
import { sourceAngle } from '#core/light/source-angle.formula.ts';
import type { Lamp } from '#core/picture/subjects/lamp.ts';
import { viewOfFlyHead } from '#site/figures/picture/fly-head.ts';
import type { PictureJob } from '#site/figures/picture/job.ts';
import type { Lit } from './ball-shading.ts';

const [magnification, pupilMagnification] = [3, 0.85];

/** How the pictures are taken, whatever the light. */
export const taken = 'A hoverfly’s head at 3:1, f/11';
const works = effectiveFNumber({ fNumber: 11, magnification, pupilMagnification });

/** The lights as an eye of the fly sees them: their size from the eye, in directions that are the same all over the head. */
function lampsOf({ sourceSize, flashDistance, lightAngle, arrangement }: Lit): readonly Lamp[] {
  const angularSize = sourceAngle({ sourceSize, flashDistance });
  const at = (angle: number): Lamp => ({ direction: [Math.sin(angle), 0, Math.cos(angle)], angularSize });
  if (arrangement === 'ring')
    return [{ ...at(0), hole: sourceAngle({ sourceSize: holeOfRing * sourceSize, flashDistance }) }];
  return arrangement === 'one' ? [at(-lightAngle)] : [at(-lightAngle), at(lightAngle)];
}

/** The fly’s head in these lights. */
export function jobOf(lit: Lit): PictureJob {
  return {
    subject: 'hoverfly-head',
    seed: 1,
    lamps: lampsOf(lit),
    view: viewOfFlyHead({
      magnification,
      effectiveFNumber: works,
      pupilMagnification,
      entrancePupilDistance: 72.5 * (1 / magnification + 1 / pupilMagnification),
    }),
  };
}
