import { lenses, type LensSlug } from '#site/state/crate.ts';
import { glassLenses } from '#site/state/glass.ts';
import { crateRegister, marks } from '#site/state/lens-marks.ts';

/** What a lens brings along. */
export const ofLens = [
  'focal-length',
  'front-principal-depth',
  'principal-separation',
  'pupil-magnification',
  'rear-protrusion',
  'reversed-lens.register-distance',
] as const;

type OwnLens = Readonly<Record<(typeof ofLens)[number], number> & { label: string }>;

/** The claws of a mount and its contacts stand out behind any flange, mm: assumed. */
export const claws = 5;

/** To a tenth of a millimetre, as one measures it. */
const tenths = (length: number) => Math.round(10 * length) / 10;

/** What stands out behind the flange: the glass of the 28 mm lens, which is known; on the others the claws alone, which is assumed. */
const protrusions: Partial<Record<LensSlug, number>> = {
  'lens-28': tenths(Math.max(claws, glassLenses['lens-28'].rearProtrusion ?? 0)),
};

/** A lens of the crate set to infinity. Close up some of them are called by another name. */
function atInfinity(slug: LensSlug): OwnLens {
  const lens = marks[slug];
  return {
    label: lenses[slug].label.replace(', at life size', ''),
    'focal-length': lens['focal-length'],
    'front-principal-depth': lens['front-principal-depth'],
    'principal-separation': lens['principal-separation'],
    'pupil-magnification': lens['pupil-magnification'],
    'rear-protrusion': protrusions[slug] ?? claws,
    'reversed-lens.register-distance': crateRegister,
  };
}

/** The crate's lenses, all set to infinity. */
export const ownLenses = Object.fromEntries(
  (Object.keys(lenses) as LensSlug[]).map((slug) => [slug, atInfinity(slug)]),
) as Readonly<Record<LensSlug, OwnLens>>;
