import { stored } from './stored.ts';

/** Which folded groups of a lesson's figure the reader has opened, by name: they are found as they were left. */
export const openFolds = stored<readonly string[]>({
  key: 'open-folds',
  words: 'list of opened groups',
  renewed: 'Fold or unfold them again.',
  fallback: [],
  isValid: (value): value is readonly string[] =>
    Array.isArray(value) && value.every((name) => typeof name === 'string'),
});
