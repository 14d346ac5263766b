import { closestMagnification, stateAt } from '#core/rig/lens-in-use.ts';
import type { ChoicePlan, Inputs } from '#site/state/choice.ts';
import { lenses, type LensSlug } from '#site/state/crate.ts';
import { crateLens, marks } from '#site/state/lens-marks.ts';

/** What a lens brings along. */
export const ofLens = [
  'focal-length',
  'focus-magnification',
  'front-principal-depth',
  'principal-separation',
  'pupil-magnification',
  'rim-diameter',
] as const;
type OfLens = (typeof ofLens)[number];

const known = new Map<string, Inputs<OfLens>>();

/**
 * A lens of the crate at the setting that gives a magnification, as it is there: one that focuses inside is shorter close up. Beyond its
 * closest focus it stays there, and rings do the rest. Benches ask for it at every move.
 */
export function lensAt(slug: LensSlug, magnification: number): Inputs<OfLens> {
  const lens = crateLens(slug);
  const closest = closestMagnification(lens);
  const setting = Math.min(magnification, closest);
  const key = `${slug} ${setting}`;
  const found = known.get(key);
  if (found) return found;
  const state = stateAt(lens, setting);
  const inUse = {
    'focal-length': Number(state.focalLength.toPrecision(6)),
    'focus-magnification': closest,
    'front-principal-depth': Number(state.frontPrincipalDepth.toPrecision(6)),
    'principal-separation': Number(state.principalSeparation.toPrecision(6)),
    'pupil-magnification': Number(state.pupilMagnification.toPrecision(6)),
    'rim-diameter': marks[slug]['rim-diameter'],
  };
  if (known.size > 4000) known.clear();
  known.set(key, inUse);
  return inUse;
}

/** As engraved: close up some of them are called by what they are there. */
export const nameOf = (slug: LensSlug) => lenses[slug].label.replace(', at life size', '');
/** In a drawing. */
export const shortNameOf = (slug: LensSlug) => `${marks[slug]['focal-length']} mm`;

/** The lens that is held, at whatever magnification is set. */
export const lensChoice: ChoicePlan<OfLens | 'magnification'> = {
  label: 'Lens',
  options: Object.fromEntries(
    (Object.keys(lenses) as LensSlug[]).map((slug) => [
      slug,
      { label: nameOf(slug), fills: ({ magnification }) => lensAt(slug, magnification) },
    ]),
  ),
};

/** Assumed, to have three that differ: how near one comes depends on the animal, the day and you. */
export const animals = {
  spider: { label: 'spider, 30 mm', 'flight-distance': 30 },
  hoverfly: { label: 'hoverfly, 120 mm', 'flight-distance': 120 },
  butterfly: { label: 'butterfly, 300 mm', 'flight-distance': 300 },
} as const;

/** The lens held between a short one and a long one; between these a macro lens, where it is one of the two. */
export function compared(
  chosen: string | undefined,
): readonly { readonly slug: LensSlug | undefined; readonly isHeld: boolean }[] {
  const [short, middle, long] = ['lens-50', 'lens-90', 'lens-200'] as const;
  if (chosen === short || chosen === long)
    return [short, middle, long].map((slug) => ({ slug, isHeld: slug === chosen }));
  return [
    { slug: short, isHeld: false },
    { slug: chosen as LensSlug | undefined, isHeld: true },
    { slug: long, isHeld: false },
  ];
}
