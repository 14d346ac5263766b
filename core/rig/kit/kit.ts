import type { Named } from '#core/quantity/formula.ts';
import type { Lens } from '../lens.ts';

/** One thing in a kit. Parts of one mount fit each other; what goes on a filter thread fits every lens, with a step ring if need be. */
export type KitRow = KitCamera | KitLens | KitRing | KitReversingRing | KitConverter | KitCloseUpLens | KitCouplingRing;

/** What every row says. */
interface KitItem {
  /** Its name in the kit, unlike any other’s. Rows alike in everything else are several of one thing. */
  readonly id: string;
  /** What it costs to get it; 0 for what is there already. */
  readonly price: number;
}

interface OnMount extends KitItem {
  /** Name of its bayonet or thread. */
  readonly mount: string;
}

export interface KitCamera
  extends OnMount, Readonly<Named<'register-distance' | 'sensor-width' | 'sensor-height' | 'circle-of-confusion'>> {
  readonly part: 'camera';
}

/** `lens.registerDistance` is that of the mount. */
export interface KitLens extends OnMount, Readonly<Named<'max-aperture'>> {
  readonly part: 'lens';
  readonly lens: Lens;
  /** The largest *N* that it stops down to. */
  readonly smallestAperture: number;
  /** Which zoom this row is one setting of. Rows of one zoom are one thing: no chain holds two of them. */
  readonly zoom?: string;
}

export interface KitRing extends OnMount, Readonly<Named<'extension'>> {
  readonly part: 'ring';
  readonly coupled?: boolean;
}

/** From the mount to a lens’s filter thread: a lens turned round hangs on it. */
export interface KitReversingRing extends OnMount, Readonly<Named<'extension'>> {
  readonly part: 'reversing ring';
}

export interface KitConverter extends OnMount, Readonly<Named<'converter-factor' | 'converter-length'>> {
  readonly part: 'converter';
  readonly coupled?: boolean;
  /** Where it bends light, if that is known: *f* below 0, *h* from its front flange back to H. Else what is printed on it, as one thin lens. */
  readonly points?: Readonly<Named<'focal-length' | 'principal-separation' | 'front-principal-depth'>>;
}

export interface KitCloseUpLens extends KitItem, Readonly<Named<'close-up-power'>> {
  readonly part: 'close-up lens';
  /** From the thread that it is screwed on to its glass, mm; 0 where left out. */
  readonly seat?: number;
  readonly clearAperture?: number;
}

/** From filter thread to filter thread: a second lens, turned round, hangs on the first. */
export interface KitCouplingRing extends KitItem, Readonly<Named<'extension'>> {
  readonly part: 'coupling ring';
}

/** What is to be photographed, and under which conditions. */
export interface KitSubject extends Readonly<
  Named<'subject-width' | 'subject-depth' | 'subject-speed' | 'luminance' | 'iso' | 'wavelength'>
> {
  /** The least share of the picture width that the subject has to take; from above 0 to 1. */
  readonly leastFill: number;
  /** The least working distance that it tolerates, mm. */
  readonly nearestDistance: number;
  /** The longest exposure however still it keeps, s. */
  readonly longestExposure: number;
}

/** A kit with missing, contradictory or unphysical data. Says which row and why. */
export class FaultyKit extends Error {
  override readonly name = 'FaultyKit';
  /** Its place in the list, from 0; null where the fault is the whole kit’s. */
  readonly row: number | null;
  readonly reason: string;

  constructor(row: number | null, reason: string) {
    super(row === null ? `kit: ${reason}` : `kit, row ${row}: ${reason}`);
    this.row = row;
    this.reason = reason;
  }
}
