import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { AnswerSpan } from '#core/rig/assumed/span-over.ts';
import { rangeWords } from '#site/kit/range-words.ts';

/** Between what an answer lies, and that there may be none: `78 to 96 mm`, `78 to 96 mm or none`. */
export const spanText = (name: QuantityName, span: AnswerSpan): string =>
  `${rangeWords(name, span)}${span.isOpen ? ' or none' : ''}`;
