/** What a page ships, read from the built files: everything that it names, at gzip size. */
import { globSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { filesNamed, reachable } from '#site/build/reached.ts';
import { builtBase } from '../support/built-base.ts';
import { root } from '../support/run.ts';
import { dist, fileOf } from './built.ts';
import { limits } from './limits.ts';

export interface Weight {
  /**
   * Bytes of gzip: of the page's HTML, of the JavaScript that it loads by itself, of what it can come to load besides, as a reader comes near
   * it or opens it, and of its stylesheets.
   */
  readonly html: number;
  readonly js: number;
  readonly laterJs: number;
  readonly css: number;
  /** Whether it has pictures made in a worker, whose code is counted too. */
  readonly picture: boolean;
}

const gzipSize = (text: string | Buffer) => (text.length === 0 ? 0 : gzipSync(text, { level: 9 }).length);

const sizeOf = (texts: Iterable<string>) => {
  let total = 0;
  for (const text of texts) total += gzipSize(text);
  return total;
};

/** The statements of a module that load others with it; what else it names in quotes it loads when it is asked to, or never. */
const staticImports = (text: string) => [...text.matchAll(/\b(?:from|import)\s*["'`][^"'`]+["'`]/g)].join('\n');

/** The worker that keeps the site for use offline is registered by a computed name and is no part of the page. */
export function weightOf(page: string): Weight {
  const built = { folder: dist, base: builtBase() };
  const html = readFileSync(fileOf(page), 'utf8');
  const inline = [...html.matchAll(/<script(?![^>]*\bsrc=)[^>]*>(.*?)<\/script>/gs)].map(([, code = '']) => code);
  const atOnce = reachable(
    filesNamed(html + inline.join('\n'), 'js', dirname(fileOf(page)), built),
    built,
    staticImports,
  );
  const all = reachable(atOnce.keys(), built);
  const later = [...all].filter(([file]) => !atOnce.has(file)).map(([, text]) => text);
  const styles = new Set([html, ...all.values()].flatMap((text) => filesNamed(text, 'css', dist, built)));
  return {
    picture: [...all.values()].some((text) => text.includes('new Worker(')),
    html: gzipSize(html),
    js: sizeOf(atOnce.values()) + gzipSize(inline.join('\n')),
    laterJs: sizeOf(later),
    css: sizeOf([...styles].map((file) => readFileSync(file, 'utf8'))),
  };
}

const codeOf = (page: string) =>
  globSync(`${page}{,figures/}*.{svelte,ts}`, { cwd: root })
    .filter((file) => !file.endsWith('.test.ts'))
    .map((file) => readFileSync(join(root, file), 'utf8'));

/** What the page of a lesson, `lessons/extension/`, may load by itself: a chain of parts takes more, drawn or not. */
export function jsLimitOf(page: string): number {
  return codeOf(page).some((text) => /side-view\/|\/lens-in-use\.ts/.test(text)) ? limits.js.chain : limits.js.plain;
}

/** What it can come to load besides, *picture* where it has pictures that are rendered: chains that readers put together take more. */
export function laterJsLimitOf(page: string, picture: boolean): number {
  const chains = codeOf(page).some((text) => text.includes('#site/chain/')) ? limits.chainsJs : 0;
  return limits.laterJs[picture ? 'picture' : 'plain'] + limits.kitJs + limits.meaningsJs + chains;
}
