import { closestMagnification, stateAt } from '#core/rig/lens-in-use.ts';
import type { ChoicePlan, Inputs } from '#site/state/choice.ts';
import { lenses, type LensSlug } from '#site/state/crate.ts';
import { crateLens } from '#site/state/lens-marks.ts';

/** What of a lens places the focus. */
export const ofLens = ['focal-length', 'pupil-magnification'] as const;
type OfLens = (typeof ofLens)[number];

/** A degree, rad. */
export const degree = Math.PI / 180;

const known = new Map<string, Inputs<OfLens>>();

/** A lens of the crate at the setting that gives a magnification; beyond its closest focus it stays there, and rings do the rest. Benches ask for it at every move. */
export function lensAt(slug: LensSlug, magnification: number): Inputs<OfLens> {
  const lens = crateLens(slug);
  const setting = Math.min(magnification, closestMagnification(lens));
  const key = `${slug} ${setting}`;
  const found = known.get(key);
  if (found) return found;
  const { focalLength, pupilMagnification } = stateAt(lens, setting);
  const inUse = {
    'focal-length': Number(focalLength.toPrecision(6)),
    'pupil-magnification': Number(pupilMagnification.toPrecision(6)),
  };
  if (known.size > 4000) known.clear();
  known.set(key, inUse);
  return inUse;
}

/** The lens in use, with as many rings as the magnification asks for. */
export const lensChoice: ChoicePlan<OfLens | 'magnification'> = {
  label: 'Lens',
  options: Object.fromEntries(
    (Object.keys(lenses) as LensSlug[]).map((slug) => [
      slug,
      {
        label: lenses[slug].label.replace(', at life size', ''),
        fills: ({ magnification }) => lensAt(slug, magnification),
      },
    ]),
  ),
};

/** Flat things, or two eyes, that lean away from the camera: along the lean. Assumed, as such things are found. */
export const leaning = {
  eyes: { label: 'hoverfly’s eyes, 1.5 mm apart', magnification: 2, 'subject-width': 1.5, 'subject-tilt': 20 * degree },
  wing: { label: 'butterfly’s wing, 25 mm', magnification: 0.5, 'subject-width': 25, 'subject-tilt': 12 * degree },
  leaf: { label: 'leaf, 60 mm', magnification: 0.25, 'subject-width': 60, 'subject-tilt': 30 * degree },
} as const;

/** How the camera is held, and how far it then sways: assumed, the task with the ruler measures it. */
export const holding = {
  hand: { label: 'standing, by hand', sway: 1 },
  elbows: { label: 'elbows on knees', sway: 0.4 },
  tripod: { label: 'tripod', sway: 0.001 },
} as const;
