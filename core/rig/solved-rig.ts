import type { ApertureControl } from './rig.ts';

/**
 * What the photographer wants to know of a rig, by where its sharp plane lies.
 *
 * In front of everything: a picture can be taken. Inside: the numbers hold, but nothing can be put there. At infinity: a view.
 * Nowhere: the lens stands so near the sensor that it focuses past infinity.
 */
export type SolvedRig = SharpRig | RigAtInfinity | RigWithoutFocus;

interface LitRig {
  /** *N_w*, of the cone of light that reaches the sensor. */
  readonly effectiveFNumber: number;
  /** Place in the chain of the part whose stop limits the cone. */
  readonly limitedBy: number;
  /** *N*, marked on that part; null for an objective or a bare rim of glass, on which none is. */
  readonly fNumber: number | null;
  /** 2 log2(N_w/N), stops; null where nothing is marked. A meter behind the lens has counted it already. */
  readonly lightLoss: number | null;
  /** Where that stop is opened and closed. */
  readonly apertureControl: ApertureControl;
}

export interface SharpRig extends LitRig {
  readonly sharpPlane: 'in front' | 'inside';
  /** *m*, above 0. */
  readonly magnification: number;
  /** False for the usual picture upside down; true where an image stands inside the rig and is imaged again. */
  readonly upright: boolean;
  /** *w*, from the foremost surface, mm; zero or negative where the sharp plane is inside. */
  readonly workingDistance: number;
  /** *L*, sensor to subject, mm. */
  readonly focusDistance: number;
  /** Of the subject plane, mm. */
  readonly fieldWidth: number;
  readonly fieldHeight: number;
  /** The aperture as the subject sees it; null where it sees it from everywhere the same: an object-side telecentric rig. */
  readonly pupil: { readonly entrancePupil: number; readonly entrancePupilDistance: number } | null;
  /** *1/u*, 1/mm: 0 for such a rig, below 0 with the pupil behind the subject. With *m* and *N_w* it is the rig's `Cone`. */
  readonly inverseEntrancePupilDistance: number;
}

/** Focused at infinity: *m* is 0, and *w*, *L* and the field have no end. */
export interface RigAtInfinity extends LitRig {
  readonly sharpPlane: 'at infinity';
}

/** No subject can be sharp: the light would have to come converging already. */
export interface RigWithoutFocus {
  readonly sharpPlane: 'nowhere';
}

const words: Record<SolvedRig['sharpPlane'], string> = {
  'in front': 'The sharp plane lies in front of the rig.',
  inside: 'The sharp plane lies inside the glass, or inside a deep rim: no subject can be put there.',
  'at infinity': 'The rig is focused at infinity.',
  nowhere: 'The lens stands too near the sensor: it focuses past infinity, and no subject is sharp.',
};

/** One sentence that says where a rig's sharp plane lies. */
export function sharpPlaneWords({ sharpPlane }: Pick<SolvedRig, 'sharpPlane'>): string {
  return words[sharpPlane];
}
