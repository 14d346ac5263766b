/* Of the club's crate, as in crate.ts: by itself, for most pages have no use for it. */

/** Powers of the two single close-up lenses, dpt; the cemented pair has the larger. */
export const closeUpPowers = [2, 4] as const;

/** What else the crate has to put between or before, by slug. Lengths in mm; the ways beyond life size start with these. */
export const parts = {
  bellows: { label: 'bellows', shortest: 40, longest: 150 },
  'reversing-ring': { label: 'reversing ring', extension: 4 },
  'coupling-ring': { label: 'coupling ring', extension: 2 },
  /** How far before the rim a close-up lens bends light. */
  'close-up-seat': { label: 'seat of a close-up lens', extension: 5 },
  'close-up-2': { label: '+2 close-up lens', 'close-up-power': 2, 'abbe-number': 58 },
  'close-up-4': { label: '+4 close-up lens', 'close-up-power': 4, 'abbe-number': 58 },
  /** As a thin lens with so large an Abbe number that what colour is left comes out right. */
  'close-up-pair-4': { label: '+4 close-up lens, cemented pair', 'close-up-power': 4, 'abbe-number': 2000 },
  'converter-1.4': { label: '×1.4 converter', 'converter-factor': 1.4, 'converter-length': 20 },
  'converter-2': { label: '×2 converter', 'converter-factor': 2, 'converter-length': 40 },
  'objective-4': {
    label: '4×/0.10 objective',
    'objective-magnification': 4,
    'numerical-aperture': 0.1,
    'tube-focal-length': 200,
    'working-distance': 30,
  },
  'objective-10': {
    label: '10×/0.25 objective',
    'objective-magnification': 10,
    'numerical-aperture': 0.25,
    'tube-focal-length': 200,
    'working-distance': 10.5,
  },
} as const;
