import type { Estimate } from '../fit/lens-fit.ts';
import type { Lens } from '../lens.ts';
import type { Assumption } from './usual-lenses.ts';

/** A number as it is printed, or measured with its error. */
export type KnownNumber = number | Estimate;

/**
 * What an owner knows of a lens: what is printed on it, what a ruler says, and what was measured. Lengths in mm, set to infinity.
 *
 * One at least of *m₀* and *L* has to be known; whatever else is left out is assumed, see {@link possibleLenses}.
 */
export interface KnownLens {
  /** *f*, as engraved. */
  readonly focalLength: KnownNumber;
  /** *R* of its own mount. */
  readonly registerDistance: number;
  /** It moves out as a whole, or groups move against each other inside. */
  readonly focusing: 'whole' | 'inside';
  /** *m₀*, the greatest that it reaches by itself; 0 for a lens that does not focus. */
  readonly closestMagnification?: KnownNumber;
  /** *L*, the nearest, sensor to subject. */
  readonly closestFocusDistance?: number;
  /** From flange to front rim. */
  readonly barrelLength?: number;
  /** The same at the closest setting of a lens that focuses inside; that at infinity where left out: the barrel keeps its length. */
  readonly closestBarrelLength?: number;
  /** *P* */
  readonly pupilMagnification?: KnownNumber;
  /** *HH'* */
  readonly principalSeparation?: KnownNumber;
  /** *h* */
  readonly frontPrincipalDepth?: KnownNumber;
  readonly apertureControl: Lens['apertureControl'];
  /** Behind the flange; where left out see {@link turnedRound}. */
  readonly rearProtrusion?: number;
}

/** What of a lens may have to be assumed. */
export type AssumedOfLens =
  | 'focus-magnification'
  | 'focus-distance'
  | 'barrel-length'
  | 'pupil-magnification'
  | 'principal-separation'
  | 'front-principal-depth'
  | 'focal-length'
  | 'rear-protrusion';

/** A lens as it is taken to be, and the lenses between which it lies. */
export interface PossibleLenses {
  readonly usual: Lens;
  /** One for every way in which what is not known may lie at one end of its range; the usual one alone where all is known. */
  readonly extremes: readonly Lens[];
  /** What is not known and has been assumed; *f* stands here for the focal length close up of a lens that focuses inside. */
  readonly assumed: readonly AssumedOfLens[];
  /** What was measured, with an error. */
  readonly measured: readonly AssumedOfLens[];
}

/** Whether a number comes with an error of its own. */
export function isMeasured(value: KnownNumber | undefined): boolean {
  return typeof value === 'object' && (value.standardError ?? 0) > 0;
}

/** Standard errors within which a measured number is taken to lie: two, 19 times in 20. */
const withinErrors = 2;

/** Between what and what a known number lies. */
export function endsOf(value: KnownNumber): Assumption {
  if (typeof value === 'number') return { least: value, usual: value, most: value };
  const off = withinErrors * (value.standardError ?? 0);
  return { least: value.value - off, usual: value.value, most: value.value + off };
}
