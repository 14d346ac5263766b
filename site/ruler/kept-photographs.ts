import { stored } from '#site/state/stored.ts';
import { arePhotographs, type KeptPhotograph } from './photograph.ts';

/** What was measured, kept on the reader's own machine; pictures themselves are not. */
export const keptPhotographs = stored<readonly KeptPhotograph[]>({
  key: 'ruler',
  words: 'measurements',
  renewed: 'Open the photographs again.',
  fallback: [],
  isValid: arePhotographs,
});

/** An id that none of them has. */
export const freeId = (photographs: readonly KeptPhotograph[]): number =>
  1 + Math.max(0, ...photographs.map(({ id }) => id));
