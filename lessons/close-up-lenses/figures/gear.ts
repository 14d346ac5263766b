import { lenses, nameOf, type LensSlug } from '#site/state/crate.ts';
import { closeUpPowers, parts } from '#site/state/crate-parts.ts';
import { marks } from '#site/state/lens-marks.ts';

/** What a lens brings along. */
export const ofLens = [
  'focal-length',
  'focus-magnification',
  'pupil-magnification',
  'front-principal-depth',
  'principal-separation',
  'close-up-gap',
] as const;

/** The seat holds the close-up lens so far before the rim. */
const { extension: seat } = parts['close-up-seat'];

type OwnLens = Readonly<Record<(typeof ofLens)[number], number> & { label: string }>;

/** A lens of the crate set to infinity. Close up some of them are called by another name. */
function atInfinity(slug: LensSlug): OwnLens {
  const lens = marks[slug];
  return {
    label: nameOf(slug),
    'focal-length': lens['focal-length'],
    'focus-magnification': 0,
    'pupil-magnification': lens['pupil-magnification'],
    'front-principal-depth': lens['front-principal-depth'],
    'principal-separation': lens['principal-separation'],
    'close-up-gap': lens['front-principal-depth'] + seat,
  };
}

/** A lens that is another one close up, as it is at its closest focus. */
function atClosest(slug: LensSlug, label: string): OwnLens {
  const { 'front-principal-depth': depth, ...lens } = lenses[slug];
  return { ...lens, label, 'front-principal-depth': depth, 'close-up-gap': depth + seat };
}

/** The crate's lenses, all set to infinity. */
export const ownLenses = Object.fromEntries(
  (Object.keys(lenses) as LensSlug[]).map((slug) => [slug, atInfinity(slug)]),
) as Readonly<Record<LensSlug, OwnLens>>;

export const lensChoices: Readonly<Record<string, OwnLens>> = {
  ...ownLenses,
  'lens-90-close': atClosest('lens-90', '90 mm f/2.8 macro, at life size'),
  'lens-200-close': atClosest('lens-200', '200 mm f/4, at its closest'),
};

const [weak, strong] = closeUpPowers;

/** What may be screwed on; powers add. */
export const powers = {
  two: { label: '+2', 'close-up-power': weak },
  four: { label: '+4', 'close-up-power': strong },
  both: { label: '+2 and +4', 'close-up-power': weak + strong },
} as const;

export const glasses = {
  single: { label: 'one glass each', 'abbe-number': parts['close-up-4']['abbe-number'] },
  pair: { label: 'a cemented pair', 'abbe-number': parts['close-up-pair-4']['abbe-number'] },
} as const;

/** No glass has so large an Abbe number: from here on it stands for two glasses that correct each other. */
export const mostOfGlass = glasses.pair['abbe-number'];

/** Of one piece of glass, the largest that glass makers list. */
const mostOfOneGlass = 100;

export const isPair = (abbeNumber: number) => abbeNumber > mostOfOneGlass;
