import type { Named } from '#core/quantity/formula.ts';
import type { Lens } from './lens.ts';

/**
 * What a chain is put together from, in mechanical order: the camera first, whatever is mounted on it next, the foremost last.
 *
 * Lengths in mm, powers in dpt. `coupled: false` says that a part has no contacts: a lens before it cannot be told its aperture.
 */
export type Part = (
  Camera | Ring | Bellows | Converter | ConverterByPoints | MountedLens | CloseUpLens | TubeLens | Objective
) &
  Outside;

/** What only a drawing asks of a part. */
export interface Outside {
  /** How wide it is outside, mm; without it a usual width is drawn. */
  readonly rimDiameter?: number;
}

export interface Camera extends Readonly<Named<'register-distance' | 'sensor-width' | 'sensor-height'>> {
  readonly part: 'camera';
}

/** Anything that only takes up length: extension ring, adapter, reversing or coupling ring, hood. */
export interface Ring extends Readonly<Named<'extension'>> {
  readonly part: 'ring';
  readonly coupled?: boolean;
}

/** A ring of adjustable length, drawn out to *extension*. */
export interface Bellows extends Readonly<Named<'extension'>> {
  readonly part: 'bellows';
  readonly shortest: number;
  readonly longest: number;
  readonly coupled?: boolean;
}

/** Known by what is printed on it: the thin model. *R* is the register it was made for. */
export interface Converter extends Readonly<Named<'converter-factor' | 'converter-length' | 'register-distance'>> {
  readonly part: 'converter';
  readonly coupled?: boolean;
}

/** Known by its cardinal points: *f* negative, *h* from its front flange back to H. */
export interface ConverterByPoints extends Readonly<
  Named<'focal-length' | 'principal-separation' | 'front-principal-depth' | 'converter-length'>
> {
  readonly part: 'converter by points';
  readonly coupled?: boolean;
}

/** A lens as it is set and mounted: right way round by its flange, or reversed by its front rim. */
export interface MountedLens extends Readonly<Named<'focus-magnification' | 'f-number'>> {
  readonly part: 'lens';
  readonly lens: Lens;
  readonly reversed?: boolean;
}

/** Thin, standing its seat before the end of the chain behind it. */
export interface CloseUpLens extends Readonly<Named<'close-up-power'>> {
  readonly part: 'close-up lens';
  /** From the thread that it is screwed on to its glass, mm; 0 where left out. */
  readonly seat?: number;
  /** Free diameter, mm; without it the glass is taken to be wide enough. */
  readonly clearAperture?: number;
}

/** Thin, its focal length the one in use, behind an infinity objective. */
export interface TubeLens extends Readonly<Named<'focal-length'>> {
  readonly part: 'tube lens';
  readonly clearAperture?: number;
}

/** A microscope objective as engraved. Its stop stands in its rear focal plane. */
export interface Objective extends Readonly<
  Named<'objective-magnification' | 'numerical-aperture' | 'working-distance'>
> {
  readonly part: 'objective';
  /** Engraved ∞: the tube lens of this focal length that the magnification is meant for. Else: shoulder to image, mm. */
  readonly design: { readonly tubeFocalLength: number } | { readonly imageDistance: number };
  /** Shoulder to specimen, mm: 45 for most. */
  readonly parfocalDistance: number;
}
