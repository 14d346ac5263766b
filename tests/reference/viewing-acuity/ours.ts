import { circleOfConfusionByViewing } from '#core/depth/circle-of-confusion-by-viewing.formula.ts';
import { circlesAcrossWidth, circleOfConfusionByWidth } from '#core/depth/circle-of-confusion-by-width.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

/** Such a letter is five limbs tall, and a limb is what the eye just tells apart on a print as large as the sensor. */
function letterSeenFrom({ viewingDistance }: { viewingDistance: number }) {
  const samesize = { sensorWidth: 36, printWidth: 36 };
  return { letter: 5 * circleOfConfusionByViewing({ viewingDistance, ...samesize }) };
}

/** In widths of the picture: how far off its circle of confusion by width is an arcminute, and nearer by as much as a pixel is smaller than that circle. */
function screenSeenFrom({ pixelsAcross, heightOverWidth }: { pixelsAcross: number; heightOverWidth: number }) {
  const unit = { sensorWidth: 1, printWidth: 1, viewingDistance: 1 };
  const widths = circleOfConfusionByWidth(unit) / circleOfConfusionByViewing(unit);
  return { viewingDistanceInHeights: (widths * circlesAcrossWidth) / pixelsAcross / heightOverWidth };
}

export const ours = oursById({
  'snellen-20-20': letterSeenFrom,
  'snellen-20-200': letterSeenFrom,
  'snellen-20-60': letterSeenFrom,
  'pixel-of-an-arcminute': screenSeenFrom,
});
