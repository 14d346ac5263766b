import { circleOfConfusionByWidth } from '#core/depth/circle-of-confusion-by-width.formula.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { ChoicePlan, Inputs } from './choice.ts';
import { bodies } from './crate.ts';

/** The choice by which a bench's circle of confusion follows from the body, and its option that does. */
export const circleChoice = 'circle-of-confusion-by';
export const byBody = 'width';

/** Where the body is not one of the crate's: as many pixels side by side as on these, 24 megapixels. */
const pixelsAcross = 6000;

/** What a bench may know of its body. */
export type BodySign = 'sensor-width' | 'pixel-pitch';

/**
 * The circle of confusion of the body that *sign* is of, mm: the crate's own where it is one of these.
 *
 * @param size mm; of the sensor's width, or of a pixel
 */
export function circleOfBody(sign: BodySign, size: number): number {
  const known = Object.values(bodies).find((body) => body[sign] === size);
  if (known) return known['circle-of-confusion'];
  return circleOfConfusionByWidth({ sensorWidth: sign === 'sensor-width' ? size : size * pixelsAcross });
}

/** The choice that keeps a bench's circle of confusion with its body until the reader sets another. It is said beside the input, not as a list. */
export function circleByBody<Sign extends BodySign>(sign: Sign): ChoicePlan<Sign | 'circle-of-confusion'> {
  const fills = (given: Inputs<QuantityName>) => ({ 'circle-of-confusion': circleOfBody(sign, given[sign]) });
  return {
    label: 'Circle of confusion',
    quiet: true,
    options: {
      [byBody]: {
        label: 'the body’s',
        fills: fills as ChoicePlan<Sign | 'circle-of-confusion'>['options'][string]['fills'],
      },
    },
  };
}

/** What problems put into their questions: the circles of the crate's bodies, as they are printed. */
export const circlesOfBodies: readonly number[] = Object.values(bodies).map((body) =>
  Number(body['circle-of-confusion'].toPrecision(3)),
);
