import text from '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2?url';
import letters from 'katex/dist/fonts/KaTeX_Math-Italic.woff2?url';
import numbers from 'katex/dist/fonts/KaTeX_Main-Regular.woff2?url';

/**
 * Font files worth `<link rel="preload" as="font" type="font/woff2" crossorigin>`: the text face on every page,
 * the two faces of formulas only where a page shows one.
 */
export const preloadedFonts = { everyPage: [text], formulas: [letters, numbers] } as const;
