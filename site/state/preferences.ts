import { stored } from './stored.ts';

export type Theme = 'system' | 'light' | 'dark';

export function isTheme(value: unknown): value is Theme {
  return value === 'system' || value === 'light' || value === 'dark';
}

/** The reader's choice of colours; the same key is read in the head of `site/layouts/Page.astro` before the first paint. */
export const theme = stored<Theme>({
  key: 'theme',
  words: 'choice of colours',
  renewed: 'Choose system, light or dark again.',
  fallback: 'system',
  isValid: isTheme,
});
