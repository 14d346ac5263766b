import { quantityOf } from '#core/quantity/vocabulary.ts';
import { subjects } from './subjects.ts';

/** What is planned for and searched for: lengths in mm, speed in mm/s. Of those that are rendered, the depth that matters. */
export interface Asking {
  readonly 'subject-width': number;
  readonly 'subject-depth': number;
  readonly 'subject-speed': number;
  /** That it keeps, or that the light needs, before the rim of the lens. */
  readonly room: number;
  /** Of the picture width, that it should take. */
  readonly 'frame-fill': number;
}

const asks = (width: number, depth: number, speed: number, room: number, fill: number): Asking => ({
  'subject-width': width,
  'subject-depth': depth,
  'subject-speed': speed,
  room,
  'frame-fill': fill,
});

/** What the club’s subjects ask for, in every lesson that asks. Sizes, speeds and patience are invented, as such things have them. */
export const asking = {
  'jumping-spider': asks(6, 3, 5, 30, 0.5),
  'flower-detail': asks(20, 4, 6, 60, 0.7),
  butterfly: asks(60, 5, 5, 200, 0.7),
  'butterfly-closed': asks(60, 1.5, 5, 200, 0.7),
  'hoverfly-head': asks(subjects['hoverfly-head'].width, 1.2, 0.2, 25, 0.4),
  'water-drop': asks(subjects['drop-on-wire'].width, subjects['drop-on-wire']['subject-depth'], 0.05, 30, 0.5),
  'frost-crystal': asks(subjects['frost-crystal'].width, subjects['frost-crystal']['subject-depth'], 0.05, 25, 0.4),
  'soap-film': asks(60, 6, 2, 100, 0.9),
  // Flat, and nothing moves it.
  stamp: asks(subjects.stamp.width, 0.4, quantityOf('subject-speed').least, 60, 0.9),
} as const satisfies Record<string, Asking>;
