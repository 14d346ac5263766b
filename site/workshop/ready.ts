import { planOf, type NewItem, type Plan } from './plan.ts';

/** Steps of one lesson, each of so many minutes. */
const steps = (lesson: string, minutes: number, ...ids: readonly string[]): readonly NewItem[] =>
  ids.map((step) => ({ kind: 'step', lesson, step, minutes }));

const pause = (title: string, minutes: number, note: string): NewItem => ({ kind: 'pause', title, minutes, note });

const whatEachRingBuys = planOf('What does each ring buy?', [
  pause('Welcome', 4, 'Say the cautions. Pass a ring round: it is empty.'),
  ...steps('life-size', 3, 'half', 'whole-picture', 'same-lens'),
  ...steps('on-the-barrel', 3, 'from-where'),
  ...steps('extension', 4, 'no-ring', 'one-ring', 'three-rings', 'light', 'longer-lens', 'inside'),
  pause(
    'A ring on your own lens',
    12,
    'A ruler under each camera: width of the sensor divided by what fills the picture.',
  ),
  ...steps('effective-aperture', 3, 'life-size'),
  {
    kind: 'question',
    question: 'A beetle 40 mm long is to fill most of a sensor 36 mm wide. 50 mm lens, 0.15× by itself: which ring?',
    options: ['12 mm', '24 mm', '36 mm'],
    holds: 2,
    caption: '36 mm: 0.15 + 36/50 = 0.87. The field is 36 mm divided by 0.87, 41 mm wide.',
    minutes: 5,
  },
]);

const fromLifeSizeToAStack = planOf('From life size to a stack', [
  pause('Welcome', 5, 'Say the cautions. A ruler in every hand: let everybody find 36 mm.'),
  ...steps('life-size', 3, 'half', 'smaller-sensor', 'same-lens'),
  ...steps('beyond-life-size', 4, 'rings', 'turned-round', 'coupled'),
  ...steps('effective-aperture', 3, 'life-size'),
  ...steps('depth-of-field', 4, 'half-life-size', 'two-stops', 'longer-lens', 'twice-the-size'),
  ...steps('diffraction', 3, 'one-point', 'two-stops-more', 'four-times'),
  pause('A break', 10, 'Set up the rail, and show it moving.'),
  ...steps('best-aperture', 3, 'open', 'meet', 'most', 'four-times'),
  ...steps('stacking', 4, 'one-frame', 'touching', 'twice-the-size', 'in-time', 'where-time-goes'),
  ...steps('merging', 4, 'drop', 'longer-step'),
  pause('Five frames of a coin', 12, 'Two to a camera: one moves the rail, one counts.'),
  {
    kind: 'question',
    question: 'A frame is sharp through 0.5 mm, neighbours share a quarter of it. How many frames for 2.4 mm?',
    options: ['5', '7', '10'],
    holds: 1,
    caption: '7: each further frame adds 0.375 mm, and 0.5 mm + 6 × 0.375 mm is the first sum past 2.4 mm.',
    minutes: 4,
  },
]);

/** Plans to begin with. */
export const readyPlans: readonly Plan[] = [whatEachRingBuys, fromLifeSizeToAStack];
