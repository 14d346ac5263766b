import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { startsOf } from '#site/state/bench.svelte.ts';
import type { ChoicePlan } from '#site/state/choice.ts';
import { lenses, nameOf, type LensSlug } from '#site/state/crate.ts';
import { parts } from '#site/state/crate-parts.ts';
import { crateRegister, marks } from '#site/state/lens-marks.ts';
import { standsOut } from '#site/state/stands-out.ts';

/** What a lens at its closest focus brings along. */
export const ofLens = [
  'focal-length',
  'focus-magnification',
  'pupil-magnification',
  'front-principal-depth',
  'principal-separation',
] as const;

const slugs = Object.keys(lenses) as LensSlug[];

function choiceAmong<const Input extends QuantityName>(
  label: string,
  fills: (slug: LensSlug) => Readonly<Record<Input, number>>,
  brings?: (slug: LensSlug) => Readonly<Partial<Record<Input, number>>>,
): ChoicePlan<Input> {
  const options = slugs.map((slug) => [
    slug,
    { label: nameOf(slug), fills: fills(slug), ...(brings && { brings: () => brings(slug) }) },
  ]);
  return { label, options: Object.fromEntries(options) as ChoicePlan<Input>['options'] };
}

/** The lens of a crate set to infinity and turned round on the camera. */
export function turnedLens(slug: LensSlug) {
  const lens = marks[slug];
  return {
    'turned-lens.focal-length': lens['focal-length'],
    'turned-lens.pupil-magnification': lens['pupil-magnification'],
    'turned-lens.front-principal-depth': lens['front-principal-depth'],
    'turned-lens.principal-separation': lens['principal-separation'],
    'turned-lens.register-distance': crateRegister,
    'turned-lens.rear-protrusion': standsOut(slug),
  } as const;
}

/** What of a lens turned round on another counts. */
export function frontLens(slug: LensSlug) {
  return {
    'reversed-lens.focal-length': marks[slug]['focal-length'],
    'reversed-lens.register-distance': crateRegister,
    'reversed-lens.rear-protrusion': standsOut(slug),
  } as const;
}

/** Turned round, nobody closes it: it stays as open as it is. */
export const openFront = (slug: LensSlug) => ({ 'reversed-lens.f-number': marks[slug]['max-aperture'] });

export const mainLens = (slug: LensSlug) => ({ 'main-lens.focal-length': marks[slug]['focal-length'] });

export const turnedChoice = choiceAmong('Lens turned round', turnedLens);
export const frontChoice = choiceAmong<keyof ReturnType<typeof frontLens> | 'reversed-lens.f-number'>(
  'Lens turned round on it',
  frontLens as never,
  openFront,
);
export const mainChoice = choiceAmong('Lens on the camera, at infinity', mainLens);

export const ofConverter = ['converter-factor', 'converter-length'] as const;
export const converters = {
  'converter-1.4': parts['converter-1.4'],
  'converter-2': parts['converter-2'],
};

export const ofObjective = [
  'objective-magnification',
  'numerical-aperture',
  'tube-focal-length',
  'objective.working-distance',
] as const;

const engraved = (slug: 'objective-4' | 'objective-10') => {
  const { label, 'working-distance': room, ...objective } = parts[slug];
  return { label, ...objective, 'objective.working-distance': room };
};
export const objectives = { 'objective-4': engraved('objective-4'), 'objective-10': engraved('objective-10') };

/** All that the bench begins with: each road with the gear that shows it best. */
export const starts = {
  ...startsOf(lenses['lens-90'], ofLens),
  ...turnedLens('lens-28'),
  ...frontLens('lens-50'),
  ...openFront('lens-50'),
  ...mainLens('lens-200'),
  ...startsOf(converters['converter-2'], ofConverter),
  ...startsOf(objectives['objective-10'], ofObjective),
} as const;
