import type { Answers } from './answers.ts';
import { answerText } from './words.ts';

/**
 * What the step of a stack goes by, where the depth that diffraction leaves is the larger of the two; '' where it is not.
 *
 * Halfway between frames λ/NA² apart focus is off by a quarter of a wave, Rayleigh's limit: see the README of `core/depth`.
 */
export function wordsOfStep(answers: Answers): string {
  const { 'depth-of-field': depth, 'wave-depth': wave } = answers;
  if (depth === undefined || wave === undefined || !(wave > depth)) return '';
  return `Step and frames go by the depth of field, ${answerText('depth-of-field', depth)}, which is geometry alone. Diffraction blurs detail over more, ${answerText('wave-depth', wave)}: steps up to that lose little.`;
}
