import { quantityOf } from '#core/quantity/vocabulary.ts';
import type { ChoicePlan } from '#site/state/choice.ts';
import { lenses, type LensSlug } from '#site/state/crate.ts';
import { lensAt, nameOf } from '#site/state/lens-in-use.ts';

/** What a lens brings along here. */
export const ofLens = ['focal-length', 'principal-separation', 'pupil-magnification'] as const;
type OfLens = (typeof ofLens)[number];

/** A lens of the crate at the setting that gives a magnification: one that focuses inside is shorter close up. */
export function lensHeldAt(slug: LensSlug, magnification: number): Readonly<Record<OfLens, number>> {
  const lens = lensAt(slug, magnification);
  return {
    'focal-length': lens['focal-length'],
    'principal-separation': lens['principal-separation'],
    'pupil-magnification': lens['pupil-magnification'],
  };
}

/** The lens that is held, at whatever magnification is set. */
export const lensChoice: ChoicePlan<OfLens | 'magnification'> = {
  label: 'Lens',
  options: Object.fromEntries(
    (Object.keys(lenses) as LensSlug[]).map((slug) => [
      slug,
      { label: nameOf(slug), fills: ({ magnification }) => lensHeldAt(slug, magnification) },
    ]),
  ),
};

const degree = Math.PI / 180;
const least = (name: 'shake-rate' | 'sideways-speed' | 'subject-speed') => quantityOf(name).least;

/** Assumed; the hands-on part measures one's own. On a tripod nothing is left that counts. */
export const holdings = {
  hand: { label: 'by hand, standing', 'shake-rate': 1.5 * degree, 'sideways-speed': 3 },
  elbows: { label: 'elbows on knees', 'shake-rate': 0.5 * degree, 'sideways-speed': 1 },
  tripod: { label: 'on a tripod', 'shake-rate': least('shake-rate'), 'sideways-speed': least('sideways-speed') },
} as const;

/** Invented speeds of the right order. What is at rest moves as little as the page can say. */
export const movers = {
  rest: { label: 'something at rest', 'subject-speed': least('subject-speed') },
  'hoverfly-head': { label: 'a hoverfly, cool morning', 'subject-speed': 0.2 },
  spider: { label: 'a spider that walks', 'subject-speed': 5 },
  flower: { label: 'a flower in a breeze', 'subject-speed': 6 },
} as const;

/** Brightness of a mid-tone, cd/m². */
export const lights = {
  sun: { label: 'in the sun', luminance: 4096 },
  shade: { label: 'in the shade', luminance: 512 },
  window: { label: 'beside a window', luminance: 64 },
  room: { label: 'in a lit room', luminance: 8 },
} as const;

export const pivots = { sensor: 'the sensor', 'entrance-pupil': 'the entrance pupil' } as const;
export type Pivot = keyof typeof pivots;
