import { degree } from '#core/quantity/units.ts';
import { quantityOf } from '#core/quantity/vocabulary.ts';

/* Of the club's crate, as in crate.ts: by itself, for most pages have no use for it. */

const least = (name: 'shake-rate' | 'sideways-speed' | 'sway') => quantityOf(name).least;

/** How the camera is held. Assumed; hands-on parts measure one's own. On a tripod nothing is left that counts. */
export const holdings = {
  hand: { label: 'by hand, standing', 'shake-rate': 1.5 * degree, 'sideways-speed': 3, sway: 1 },
  elbows: { label: 'elbows on knees', 'shake-rate': 0.5 * degree, 'sideways-speed': 1, sway: 0.4 },
  tripod: {
    label: 'on a tripod',
    'shake-rate': least('shake-rate'),
    'sideways-speed': least('sideways-speed'),
    sway: least('sway'),
  },
} as const;

/** The twin-arm flash: its guide number, and the shortest time that the club's cameras stand open for. */
export const twinArm = { 'guide-number': 14, 'sync-speed': 1 / 200 } as const;

/** How wide the lights are, mm: the flash's own head, and what is held in front of it. */
export const lampWidths = { head: 60, paper: 100, bowl: 160, card: 300 } as const;

/** Brightness of a mid-tone, cd/m². */
export const lights = {
  sun: { label: 'in the sun', luminance: 4096 },
  shade: { label: 'in the shade', luminance: 512 },
  window: { label: 'beside a window', luminance: 64 },
  room: { label: 'in a lit room', luminance: 8 },
} as const;
