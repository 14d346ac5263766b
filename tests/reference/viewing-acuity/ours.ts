import { circleOfConfusionByViewing } from '#core/depth/circle-of-confusion-by-viewing.formula.ts';

/** Such a letter is five limbs tall, and a limb is what the eye just tells apart on a print as large as the sensor. */
export function ours({ viewingDistance }: { viewingDistance: number }) {
  const samesize = { sensorWidth: 36, printWidth: 36 };
  return { letter: 5 * circleOfConfusionByViewing({ viewingDistance, ...samesize }) };
}
