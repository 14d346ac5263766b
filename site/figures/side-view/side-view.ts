import type { PlacedGlass, PlacedRay } from '#core/rig/glass-positions.ts';
import type { RigPositions } from '#core/rig/positions.ts';
import type { AxialSpan } from '#core/rig/spans.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { Range } from '#site/state/address.ts';

/** One chain to be drawn: plain data, places in mm from the sensor as the rig engine gives them. */
export interface SideViewChain {
  readonly positions: RigPositions;
  /** The most important first: where the sheet is low the last are left out. */
  readonly dimensions?: readonly SideViewDimension[];
  /** What its parts are called, in their order; '' for what needs no name. */
  readonly labels?: readonly string[];
  /** Ends of its parts that go by a name, and where they are, mm from the sensor. */
  readonly ends?: readonly { readonly at: number; readonly name: string; readonly part: number }[];
  /** What the sharp plane takes in, in words with its number. */
  readonly field?: string;
  /** What a reader must know of it that the rig does not say, in a few words. */
  readonly notice?: string;
  /** The glass of lenses whose surfaces are known, drawn by `glass` of what is shown. */
  readonly glass?: readonly PlacedGlass[];
  /** Rays traced exactly through that glass. */
  readonly glassRays?: readonly PlacedRay[];
  /** A circle about the subject; drawn by `about` of what is shown. */
  readonly around?: Around;
  /** Whether lines from the subject to the rim show what of the sky the lens hides from it, by `about`, too. */
  readonly hidesSky?: boolean;
  /** How high above the axis stands what a lesson lays over it, mm: the scale makes room for that where it can. */
  readonly reachesUp?: number;
}

/** A distance to be dimensioned: one of those that `rigSpans` knows, or a part from end to end. */
export interface SideViewDimension {
  readonly name: QuantityName;
  /** With its unit, as the page prints it elsewhere. */
  readonly value: string;
  /** A part of the chain, from end to end, instead of the span that the name stands for. */
  readonly part?: number;
  /** Its ends, mm from the sensor, of a distance that no rig knows by its name. */
  readonly span?: AxialSpan;
  /** Drawn inside the outlines, with its letter alone. */
  readonly inside?: boolean;
}

/** A circle about the middle of the subject: how near an animal lets anything come, say. */
export interface Around {
  readonly name: QuantityName;
  /** mm */
  readonly radius: number;
  /** Beside it, the fullest first; nothing where several chains have the same. */
  readonly words?: readonly string[];
}

/** Something that can be taken hold of. */
export interface SideViewHandle {
  /** The subject, the circle about it, or a part by its place in the chain. */
  readonly at: 'subject' | 'around' | number;
  readonly chain?: number;
  /** The quantity that it moves: keys step it as its slider does. */
  readonly name: QuantityName;
  /** For listeners: what is moved, and what that does. */
  readonly label: string;
  readonly value: number;
  readonly range: Range;
  /**
   * The hand has put the thing *at* mm from the sensor: the sharp plane, the circle's side towards the sensor, or the part's end
   * towards the sensor. *taken* says where it stood
   * when it was taken hold of, and the quantity's value then.
   */
  readonly onmove: (at: number, taken: { readonly at: number; readonly value: number }) => void;
  readonly onstep: (value: number) => void;
  /** The hand is *moved* pixels from where it took hold, and has let go there once *isHeld* is false: for what may be pulled off the drawing. */
  readonly onpull?: (moved: { readonly x: number; readonly y: number }, isHeld: boolean) => void;
}
