import type { Named } from '#core/quantity/formula.ts';
import {
  cameraPart,
  contradiction,
  drawnWithRim,
  lensPart,
  type DrawnChain,
} from '#site/figures/side-view/lens-on-camera.ts';
import { parts } from '#site/state/crate-parts.ts';

/** What of the bench the chains are put together from. */
export const ofChain = [
  'focal-length',
  'focus-magnification',
  'f-number',
  'pupil-magnification',
  'front-principal-depth',
  'principal-separation',
  'close-up-power',
  'close-up-gap',
  'sensor-width',
] as const;
type Given = Readonly<Named<(typeof ofChain)[number]>>;

/** What the numbers say of the lens and no lens can be, in a few words. */
type Noticed = DrawnChain & { readonly notice?: string };

const { extension: seat } = parts['close-up-seat'];

/** Camera, lens, and the close-up lens g before its H: its frame is drawn as a part of the lens, and what a hand adds as a ring. */
export function closeUpChain(given: Given): Noticed & { readonly closeUpAt: number } {
  const { frontPrincipalDepth: depth, closeUpGap: gap, closeUpPower } = given;
  const lens = { ...given, frontPrincipalDepth: Math.min(gap, depth + seat) };
  const chain = drawnWithRim(lens, (rim) => [
    cameraPart(given.sensorWidth),
    lensPart({ ...given, frontPrincipalDepth: rim }),
    { part: 'ring', extension: Math.max(0, gap - rim) },
    { part: 'close-up lens', closeUpPower },
  ]);
  const isInside = depth > gap && !chain.isContradictory;
  return { ...noticed(chain), closeUpAt: 3, ...(isInside && { notice: 'the rim would be before the close-up lens' }) };
}

/** The same lens on a ring instead. */
export function ringChain(given: Given, extension: number): Noticed {
  return noticed(
    drawnWithRim(given, (rim) => [
      cameraPart(given.sensorWidth),
      { part: 'ring', extension },
      lensPart({ ...given, frontPrincipalDepth: rim }),
    ]),
  );
}

const noticed = (chain: DrawnChain): Noticed => ({ ...chain, ...(chain.isContradictory && { notice: contradiction }) });
