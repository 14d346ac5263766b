import { closestMagnification, stateAt } from '#core/rig/lens-in-use.ts';
import { startsOf } from './bench.svelte.ts';
import type { ChoicePlan, Inputs } from './choice.ts';
import { lenses, nameOf, type LensSlug } from './crate.ts';
import { crateLens, marks } from './lens-marks.ts';
import { remembered } from './remembered.ts';

/** What a lens brings along. */
export const ofLens = [
  'focal-length',
  'focus-magnification',
  'front-principal-depth',
  'principal-separation',
  'pupil-magnification',
  'rim-diameter',
] as const;
export type OfLens = (typeof ofLens)[number];

const kept = remembered<Inputs<OfLens>>(4000);

/**
 * A lens of the crate at the setting that gives a magnification, as it is there: one that focuses inside is shorter close up. Beyond its
 * closest focus it stays there, and rings do the rest. Benches ask for it at every move.
 */
export function lensAt(slug: LensSlug, magnification: number): Inputs<OfLens> {
  const lens = crateLens(slug);
  const closest = closestMagnification(lens);
  const setting = Math.min(magnification, closest);
  return kept(`${slug} ${setting}`, () => {
    const state = stateAt(lens, setting);
    return {
      'focal-length': Number(state.focalLength.toPrecision(6)),
      'focus-magnification': closest,
      'front-principal-depth': Number(state.frontPrincipalDepth.toPrecision(6)),
      'principal-separation': Number(state.principalSeparation.toPrecision(6)),
      'pupil-magnification': Number(state.pupilMagnification.toPrecision(6)),
      'rim-diameter': marks[slug]['rim-diameter'],
    };
  });
}

/** The lens that is held, at whatever magnification is set: of what it brings along, *names*. */
export function lensHeld<Name extends OfLens>(names: readonly Name[]): ChoicePlan<Name | 'magnification'> {
  const options = (Object.keys(lenses) as LensSlug[]).map((slug) => [
    slug,
    {
      label: nameOf(slug),
      fills: ({ magnification }: Inputs<'magnification'>) => startsOf(lensAt(slug, magnification), names),
    },
  ]);
  return { label: 'Lens', options: Object.fromEntries(options) as ChoicePlan<Name | 'magnification'>['options'] };
}

/** In a drawing. */
export const shortNameOf = (slug: LensSlug) => `${marks[slug]['focal-length']} mm`;
