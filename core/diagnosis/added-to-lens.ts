import type { QuantityName } from '#core/quantity/vocabulary.ts';

/** Things that change the magnification of the lens they are put on. */
export const addedToLens: readonly QuantityName[] = ['extension', 'close-up-power', 'converter-factor'];
