import mdx from '@astrojs/mdx';
import { unified } from '@astrojs/markdown-remark';
import svelte from '@astrojs/svelte';
import { defineConfig } from 'astro/config';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';
import { leanSvelte } from './site/build/lean-svelte.ts';
import { keepSpokenVocabulary } from './site/build/spoken-vocabulary.ts';
import { leavePrintedTextBehind } from './site/build/without-printed-text.ts';
import { offline } from './site/offline/write-worker.ts';
import { katexWoff2 } from './site/build/katex-woff2.ts';
import { failOnBadTex } from './site/controls/formula/fail-on-bad-tex.ts';

/** Short names for scoped styles: they stand in every element of every widget that readers load. */
const cssHash = ({ hash, filename }) => `s${hash(filename).slice(0, 4)}`;

/** One file for what every lesson needs: it is fetched once and packs better than ten. */
const workbookChunk = {
  name: 'workbook',
  test: /node_modules|core.(?:quantity|practice|gaussian.(?:effective-f-number|image-width|field-width|focus-distance|pixels-per-millimetre))|site.(?:controls|figures.(?!plot|picture|side-view|sheet.(?:boxes|labels))|islands|stage|state.(?:address|answer|bench|choice|crate|location|progress))/,
};

export default defineConfig({
  srcDir: './site',
  publicDir: './site/public',
  base: process.env.BASE_PATH ?? '/',
  trailingSlash: 'always',
  build: { inlineStylesheets: 'never' },
  devToolbar: { enabled: false },
  markdown: { processor: unified({ remarkPlugins: [remarkMath], rehypePlugins: [rehypeKatex, failOnBadTex] }) },
  integrations: [svelte({ compilerOptions: { cssHash, discloseVersion: false, runes: true } }), mdx(), offline()],
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data: blob:",
        "font-src 'self'",
        "connect-src 'self'",
        "worker-src 'self' blob:",
        "object-src 'none'",
        "base-uri 'self'",
        "form-action 'self'",
      ],
      // KaTeX and figures set sizes in style attributes; styles cannot run code, scripts stay on hashes alone.
      styleDirective: { resources: ["'self'", { resource: "'unsafe-inline'", kind: 'attribute' }] },
    },
  },
  vite: {
    plugins: [katexWoff2(), leanSvelte(), keepSpokenVocabulary(), leavePrintedTextBehind()],
    // Fonts stay files: the content policy allows no data: fonts, and a file is cached once for all pages.
    build: { assetsInlineLimit: 0, rolldownOptions: { output: { codeSplitting: { groups: [workbookChunk] } } } },
    preview: { strictPort: true },
  },
});
