import { lenses, nameOf, type LensSlug } from '#site/state/crate.ts';
import { crateRegister, marks } from '#site/state/lens-marks.ts';
import { standsOut } from '#site/state/stands-out.ts';

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

/** A lens of the crate set to infinity. Close up some of them are called by another name. */
function atInfinity(slug: LensSlug): OwnLens {
  const lens = marks[slug];
  return {
    label: nameOf(slug),
    'focal-length': lens['focal-length'],
    'front-principal-depth': lens['front-principal-depth'],
    'principal-separation': lens['principal-separation'],
    'pupil-magnification': lens['pupil-magnification'],
    'rear-protrusion': standsOut(slug),
    'reversed-lens.register-distance': crateRegister,
  };
}

/** The crate's lenses, all set to infinity. */
export const ownLenses = Object.fromEntries(
  (Object.keys(lenses) as LensSlug[]).map((slug) => [slug, atInfinity(slug)]),
) as Readonly<Record<LensSlug, OwnLens>>;
