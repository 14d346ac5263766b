import type { Named } from '#core/quantity/formula.ts';
import type { Prescription } from './prescription.ts';

/**
 * A camera lens by its cardinal points, as a kit holds it: what does not depend on how it is set or mounted.
 *
 * *f*, *HH'*, *P* and *h* are those of its infinity setting; *R* is the register of its own mount, from flange to infinity
 * focus. Between them they place both flange and rim. See [README](README.md#a-lens-in-the-chain).
 */
export interface Lens extends Readonly<
  Named<'focal-length' | 'principal-separation' | 'front-principal-depth' | 'pupil-magnification' | 'register-distance'>
> {
  readonly focusing: Focusing;
  /** Who opens and closes the iris: a ring on the lens itself, or the camera through contacts. */
  readonly apertureControl: 'lens' | 'camera';
  /** What stands out behind the flange at infinity, mm; foremost when the lens is turned round. 0 where left out. */
  readonly rearProtrusion?: number;
  /** Of it, what is fixed to the flange, as claws and contacts are, mm: the rest goes with the glass. 0 where left out. */
  readonly fixedProtrusion?: number;
  /** Its glass, surface by surface, where that is known: to be drawn, and with settings in it to be traced at each of them. */
  readonly prescription?: Prescription;
}

/** How a lens comes closer than infinity. */
export type Focusing = UnitFocusing | InternalFocusing | FocusingByStates | FocusingByPrescription;

/** The whole lens moves away from the sensor; f, HH', P, h and D stay as they are. */
export interface UnitFocusing {
  readonly by: 'unit';
  /** *m₀* at its closest setting. */
  readonly closestMagnification: number;
}

/**
 * Groups move inside, and of what happens on the way only two numbers are known: how close, and how large there.
 *
 * What they do not say is assumed, and what is assumed has to be chosen: `keeps`. How far the truth may lie from it says
 * `internalFocusBrackets`. See [README](README.md#focusing).
 */
export interface InternalFocusing {
  readonly by: 'internal';
  readonly closestMagnification: number;
  /** *L*, sensor to subject, mm, at that magnification. */
  readonly closestFocusDistance: number;
  readonly keeps: KeptInside;
}

/** What a lens with internal focusing keeps; the barrel keeps its length with each. */
export type KeptInside =
  /** *HH'*, *P* and *D* stay, power grows evenly with *m₀* */
  | 'entrance-pupil'
  /** *HH'*, *P* and *f/D* stay, power grows evenly with *m₀* */
  | 'f-number'
  /** the iris and all glass behind it stand still, so that the cone at the sensor stays; H' is taken to stay as well */
  | 'iris-and-rear-group';

/**
 * Known at several settings, of which the first is infinity and magnifications grow: measured, or printed.
 *
 * In between not f, P, HH' and h each for itself are taken to run smoothly, for they would contradict each other, but elements of ray-transfer
 * matrices, which follow the spacings. See [README](README.md#between-settings).
 */
export interface FocusingByStates {
  readonly by: 'states';
  readonly states: readonly FocusState[];
}

/** Traced at every setting, surface by surface: the lens has a `prescription` with settings. */
export interface FocusingByPrescription {
  readonly by: 'prescription';
}

/** The lens at one of its settings. */
export interface FocusState extends Readonly<
  Named<
    'focus-magnification' | 'focal-length' | 'principal-separation' | 'front-principal-depth' | 'pupil-magnification'
  >
> {
  /** (f/D)/N: how far the f-number that counts here has drifted from the marked one; 1 at infinity. */
  readonly fNumberDrift: number;
}

/** One setting of one lens: what the chain needs. */
export interface LensInUse extends Readonly<
  Named<
    | 'focal-length'
    | 'principal-separation'
    | 'front-principal-depth'
    | 'pupil-magnification'
    | 'f-number'
    | 'entrance-pupil'
  >
> {
  /** From H' back to the lens's own flange, mm; negative where H' lies behind the flange. */
  readonly flangeDepth: number;
  /** What stands out behind the flange at this setting, mm. */
  readonly rearProtrusion: number;
}
