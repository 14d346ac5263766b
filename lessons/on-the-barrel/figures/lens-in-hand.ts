import { magnificationAtFocusDistance } from '#core/gaussian/magnification-at-focus-distance.formula.ts';
import type { ChoicePlan } from '#site/state/choice.ts';
import { lenses } from '#site/state/crate.ts';
import { crateRegister, marks, type Marks } from '#site/state/lens-marks.ts';

/** The lenses of the crate that move as a whole: what their marks say of size and travel holds. Those that focus inside have a lesson of their own. */
export const handLenses = ['lens-50', 'lens-28', 'lens-18', 'lens-55', 'lens-100'] as const;

/** Slug of one of them. */
export type HandLens = (typeof handLenses)[number];

/** Nearest at which a lens moved as a whole is sharp, wherever its thread ends, mm from the sensor; not above 0 where its planes cross over widely. */
export function nearestOf(given: {
  readonly 'focal-length'?: number;
  readonly 'principal-separation'?: number;
}): number {
  const { 'focal-length': focalLength = NaN, 'principal-separation': principalSeparation = NaN } = given;
  return 4 * focalLength + principalSeparation;
}

/** How far the lens stands out when it is focused there, as a share of its focal length: no farther than at life size. */
function travelShare(given: Pick<Marks, 'focal-length' | 'principal-separation'>, focusDistance: number): number {
  const [focalLength, principalSeparation] = [given['focal-length'], given['principal-separation']];
  if (focusDistance <= nearestOf(given)) return 1;
  return magnificationAtFocusDistance({ focalLength, focusDistance, principalSeparation });
}

/** Flange to front rim of one of the crate's lenses with its ring at a distance, mm: its length at infinity and its travel. */
export function barrelAt(slug: HandLens, focusDistance: number): number {
  const lens = marks[slug];
  const atInfinity =
    lens['focal-length'] + lens['principal-separation'] + lens['front-principal-depth'] - crateRegister;
  return atInfinity + lens['focal-length'] * travelShare(lens, focusDistance);
}

type Filled = 'focal-length' | 'max-aperture' | 'principal-separation' | 'pupil-magnification' | 'barrel-length';

/** A lens with the barrel that it has at the distance set; chosen by hand it comes no nearer and no wider open than its rings go. */
export const lensChoice: ChoicePlan<Filled | 'focus-distance' | 'f-number'> = {
  label: 'Lens',
  takes: 'whole',
  options: Object.fromEntries(
    handLenses.map((slug) => {
      const lens = marks[slug];
      return [
        slug,
        {
          label: lenses[slug].label,
          fills: ({ 'focus-distance': distance }) => ({
            'focal-length': lens['focal-length'],
            'max-aperture': lens['max-aperture'],
            'principal-separation': lens['principal-separation'],
            'pupil-magnification': lens['pupil-magnification'],
            'barrel-length': barrelAt(slug, distance),
          }),
          brings: ({ 'focus-distance': distance, 'f-number': fNumber }) => ({
            'focus-distance': Math.max(lens.closest['focus-distance'], distance),
            'f-number': Math.min(lens.smallestAperture, Math.max(lens['max-aperture'], fNumber)),
          }),
        },
      ];
    }),
  ),
};
