import { quantityOf } from '#core/quantity/vocabulary.ts';

/** What a lens brings along here. */
export const ofLens = ['focal-length', 'principal-separation', 'pupil-magnification'] as const;

/** Invented speeds of the right order. What is at rest moves as little as the page can say. */
export const movers = {
  rest: { label: 'something at rest', 'subject-speed': quantityOf('subject-speed').least },
  'hoverfly-head': { label: 'a hoverfly, cool morning', 'subject-speed': 0.2 },
  spider: { label: 'a spider that walks', 'subject-speed': 5 },
  flower: { label: 'a flower in a breeze', 'subject-speed': 6 },
} as const;

export const pivots = { sensor: 'the sensor', 'entrance-pupil': 'the entrance pupil' } as const;
export type Pivot = keyof typeof pivots;
