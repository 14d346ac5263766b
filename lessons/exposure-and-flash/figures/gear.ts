import { quantityOf } from '#core/quantity/vocabulary.ts';
import type { ChoicePlan } from '#site/state/choice.ts';
import { lenses } from '#site/state/crate.ts';
import { twinArm } from '#site/state/crate-light.ts';

/** How long the crate's twin-arm flash shines (t0.1) at some of its powers, s. */
const shines = [
  [1, 1 / 1000],
  [1 / 4, 1 / 4000],
  [1 / 16, 1 / 10_000],
  [1 / 64, 1 / 20_000],
] as const;

/** How long it shines at any power, s: evenly in stops between the powers that are known, and on beyond them. */
export function shinesFor(power: number): number {
  const after = shines.findIndex(([known]) => known <= power);
  const at = after < 0 ? shines.length - 1 : Math.max(1, after);
  const [[more, longer], [less, shorter]] = [shines[at - 1]!, shines[at]!];
  const part = Math.log(power / less) / Math.log(more / less);
  return Number((shorter * (longer / shorter) ** part).toPrecision(6));
}

const { least, most } = quantityOf('flash-duration');

/** How long it shines follows its power. */
export const flashChoice: ChoicePlan<'guide-number' | 'sync-speed' | 'flash-duration' | 'flash-power'> = {
  label: 'Flash',
  options: {
    'twin-arm': {
      label: 'the crate’s twin-arm flash',
      fills: (given) => ({
        ...twinArm,
        'flash-duration': Math.min(most, Math.max(least, shinesFor(given['flash-power']))),
      }),
    },
  },
};

/** What flashes can be set to (common practice). */
export const powers = Object.fromEntries(
  [1, 2, 4, 8, 16, 32, 64, 128].map((part) => [
    part === 1 ? 'full' : `p${part}`,
    { label: part === 1 ? 'full power' : `1/${part} of full power`, 'flash-power': 1 / part },
  ]),
);

/** The crate's 90 mm macro lens at life size, where a drawing has to put a lens. */
const drawnLens = lenses['lens-90'];

/** From that rim to the subject, mm. */
export const rimToSubject = (magnification: number) =>
  drawnLens['focal-length'] * (1 + 1 / magnification) - drawnLens['front-principal-depth'];

/** From its entrance pupil to the subject, mm. */
export const pupilToSubject = (magnification: number, pupilMagnification: number) =>
  drawnLens['focal-length'] * (1 / magnification + 1 / pupilMagnification);
