import { globSync } from 'node:fs';
import mdx from '@astrojs/mdx';
import { unified } from '@astrojs/markdown-remark';
import svelte from '@astrojs/svelte';
import { defineConfig } from 'astro/config';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';
import { equations } from './site/build/equations.ts';
import { fewStyles } from './site/build/few-styles.ts';
import { foldParts } from './site/build/fold-parts.ts';
import { lessonGlue } from './site/build/lesson-glue.ts';
import { meanings } from './site/build/meanings.ts';
import { onServerAlone } from './site/build/on-server-alone.ts';
import { ownCopies } from './site/build/own-copies.ts';
import { partsInOrder } from './site/build/parts-in-order.ts';
import { problemTexts } from './site/build/problem-texts.ts';
import { setWithinExamples } from './site/build/set-within-examples.ts';
import { stylesOnce } from './site/build/styles-once.ts';
import { plainImports } from './site/build/plain-imports.ts';
import { plainMarkup } from './site/build/plain-markup.ts';
import { leavePrintedTextBehind } from './site/build/without-printed-text.ts';
import { offline } from './site/offline/write-worker.ts';
import { katexWoff2 } from './site/build/katex-woff2.ts';
import { subsetFonts } from './site/build/subset-fonts.ts';
import { failOnBadTex } from './site/controls/formula/fail-on-bad-tex.ts';
import { linkTerms } from './site/terms/link-terms.ts';

/** Short names for scoped styles: they stand in every element of every widget that readers load. */
const cssHash = ({ hash, filename }) => `s${hash(filename).slice(0, 4)}`;

/** What every page remembers and how it fetches, for those that are no lesson; and articles, for figures that have no use for the rest of the problems' texts. */
const storedChunk = {
  name: 'stored',
  test: /site.state.(?:stored|preferences)|site.layouts|core.quantity.article|vite.preload-helper/,
  priority: 2,
};

/** What sets and marks problems, fetched when a reader comes near them. */
const practiceChunk = {
  name: 'practice',
  // Sheets and reviews of many lessons are of the page that has them.
  test: /core.practice.(?!review|versions)|site.(?:controls.practice.(?!working)|state.progress)/,
};

/** By itself: a figure may deal with chance, too, and shall not bring the problems with it. */
const chanceChunk = { name: 'chance', test: /core.chance|pure-rand/, priority: 1 };

/**
 * One file for what at least two lessons in three need: it is fetched once and packs better than ten. Pictures, plots and chains
 * of parts stay by themselves, for pages without one.
 */
const lessons = globSync('lessons/*/lesson.mdx').length;
const workbookChunk = {
  name: 'workbook',
  test: /^(?!.*site.(?:figures.(?:plot|picture|side-view)|state.(?:subjects|lens-marks|progress)|controls.practice)|.*core.(?!quantity)|.*pure-rand)/,
  minShareCount: Math.ceil((2 * lessons) / 3),
  priority: 0,
};

/** What keeps formulas in step with numbers, fetched once those move. */
const linesChunk = {
  name: 'lines',
  test: /site.controls.formula.(?:in-step|patch|line)\.ts|site.state.formula-line|core.quantity.printed-line/,
  priority: 0.9,
};

/** By itself: an evening is planned with no projected view, and its windows know the keys of one. */
const keysChunk = { name: 'keys', test: /site.stage.keys/, priority: 1 };

/** What projects steps, of one lesson or of several. */
const stageChunk = { name: 'stage', test: /site.stage.(?!fetch-projection|played|PlayedBench|first-steps)/ };

/** What every page has that moves at all: the framework, and how quantities are read and printed. The pages beside the lessons need no more of the workbook's, and no steps of a bench. */
const everyPageChunk = {
  name: 'every-page',
  test: /node_modules.(?:svelte|clsx|esm-env)\b|core.quantity(?!.(?:printed-line|answers-from|answer-step|renamed))|core.gaussian|site.state.(?:answer|shown-formulas|address|kept-circle|location|crate|after-rest|rungs)\.ts|core.depth.circle|site.print.(?:printing|fit|as-on-paper)|site.controls.(?:letter|workbench.CopyAddress)/,
  minShareCount: Math.ceil((2 * lessons) / 3),
  priority: 1,
};

/** Lenses as they focus, for lessons that have no more of a chain; and chains of parts, which all take at once. */
const lensChunk = {
  name: 'lens',
  test: /core.rig.(?:require-lens|internal-focusing|between-settings|lens-in-use|states-between|rear-protrusion|traced-focusing)\.ts/,
  minShareCount: 3,
  priority: 0.4,
};
const rigChunk = {
  name: 'rig',
  test: /core.rig.(?:solve|place|impossible-chain|assemble|objective-points|thin-converter|ray-paths|positions|outside-radius|element-points|cardinal-points|spans)\.ts/,
  minShareCount: 3,
  priority: 0.3,
};

/** A plot's axes, curves and sheet, for pages that have one. */
const plotChunk = { name: 'plot', test: /site.figures.plot/, minShareCount: 3, priority: 0 };

/** How a sheet is drawn, for pages with a figure that are no lesson. */
const drawingChunk = {
  name: 'drawing',
  test: /site.figures.(?:dimension|scale|handle|sheet)|d3-array/,
  minShareCount: Math.ceil((2 * lessons) / 3),
  priority: 0.5,
};

const base = process.env.BASE_PATH ?? '/';

export default defineConfig({
  srcDir: './site',
  publicDir: './site/public',
  base,
  trailingSlash: 'always',
  build: { inlineStylesheets: 'never' },
  devToolbar: { enabled: false },
  markdown: {
    processor: unified({
      remarkPlugins: [remarkMath, partsInOrder, setWithinExamples, foldParts, [linkTerms, { base }]],
      rehypePlugins: [rehypeKatex, failOnBadTex],
    }),
  },
  integrations: [
    onServerAlone(svelte({ compilerOptions: { cssHash, discloseVersion: false, runes: true } })),
    mdx(),
    fewStyles(),
    plainMarkup(),
    // It tells from the files as they are whether they are new.
    offline(),
  ],
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
    plugins: [
      lessonGlue(),
      ownCopies(),
      equations(),
      meanings(),
      problemTexts(),
      katexWoff2(),
      subsetFonts(),
      leavePrintedTextBehind(),
      stylesOnce(),
      plainImports(),
    ],
    // Fonts stay files: the content policy allows no data: fonts, and a file is cached once for all pages.
    build: {
      assetsInlineLimit: 0,
      rolldownOptions: {
        output: {
          codeSplitting: {
            groups: [
              storedChunk,
              chanceChunk,
              everyPageChunk,
              drawingChunk,
              lensChunk,
              rigChunk,
              workbookChunk,
              plotChunk,
              linesChunk,
              keysChunk,
              stageChunk,
              practiceChunk,
            ],
          },
        },
      },
    },
    preview: { strictPort: true },
  },
});
