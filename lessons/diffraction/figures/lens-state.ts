import type { Named } from '#core/quantity/formula.ts';

/** What both sheets show: a perfect lens, the pixels behind it, and a pattern on them. Lengths in mm, frequencies in 1/mm. */
export type LensState = Readonly<
  Named<
    | 'f-number'
    | 'wavelength'
    | 'effective-f-number'
    | 'airy-diameter'
    | 'pixel-pitch'
    | `${'cutoff' | 'nyquist' | 'spatial'}-frequency`
  >
>;
