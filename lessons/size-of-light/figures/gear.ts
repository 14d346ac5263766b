import type { Arrangement } from '#core/light/lights-around-ball.ts';
import { lampWidths } from '#site/state/crate-light.ts';

/** The crate's lights, width in mm: the flash's own head, and what is held in front of it. */
export const lamps = {
  head: { label: 'flash head, 60 mm', 'source-size': lampWidths.head },
  paper: { label: 'diffusing paper, 100 mm', 'source-size': lampWidths.paper },
  bowl: { label: 'white bowl, 160 mm', 'source-size': lampWidths.bowl },
  card: { label: 'white card, 300 mm', 'source-size': lampWidths.card },
} as const;

/** Round shiny things, radius in mm. */
export const balls = {
  hoverfly: { label: 'a hoverfly’s eye', 'ball-radius': 0.8 },
  spider: { label: 'a spider’s eye', 'ball-radius': 0.6 },
  beetle: { label: 'a round beetle', 'ball-radius': 3 },
  marble: { label: 'a glass marble', 'ball-radius': 8 },
} as const;

/** How thick the needle is whose shadow is drawn, mm. */
export const needle = 0.6;

/** How the lights stand, as the core has it. */
export const arrangements = {
  one: 'one, to the left',
  two: 'two, one each side',
  ring: 'a ring round the lens',
} as const satisfies Record<Arrangement, string>;
