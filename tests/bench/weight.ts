/** What a page ships, read from the built files: everything that it names, at gzip size. */
import { existsSync, globSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
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

/** Files of the site with this extension whose names stand in quotes in *text*, which lies in *folder*. */
function named(text: string, extension: 'js' | 'css', folder: string): string[] {
  const base = builtBase();
  const quoted = new RegExp(`["'\`]([^"'\`\\s]+\\.${extension})["'\`]`, 'g');
  return [...text.matchAll(quoted)].flatMap(([, name = '']) => {
    const candidates = name.startsWith(base)
      ? [join(dist, name.slice(base.length))]
      : [join(folder, name), join(dist, name)];
    return candidates.filter((file) => file.startsWith(dist) && existsSync(file)).slice(0, 1);
  });
}

/** The statements of a module that load others with it; what else it names in quotes it loads when it is asked to, or never. */
const staticImports = (text: string) => [...text.matchAll(/\b(?:from|import)\s*["'`][^"'`]+["'`]/g)].join('\n');

/** All modules that can be reached from *start* by what *follow* leaves of a module's text, by file. */
function reachable(start: Iterable<string>, follow: (text: string) => string): ReadonlyMap<string, string> {
  const texts = new Map<string, string>();
  const files = new Set(start);
  for (const file of files) {
    const text = readFileSync(file, 'utf8');
    texts.set(file, text);
    for (const next of named(follow(text), 'js', dirname(file))) files.add(next);
  }
  return texts;
}

/** The worker that keeps the site for use offline is registered by a computed name and is no part of the page. */
export function weightOf(page: string): Weight {
  const html = readFileSync(fileOf(page), 'utf8');
  const inline = [...html.matchAll(/<script(?![^>]*\bsrc=)[^>]*>(.*?)<\/script>/gs)].map(([, code = '']) => code);
  const atOnce = reachable(named(html + inline.join('\n'), 'js', dirname(fileOf(page))), staticImports);
  const all = reachable(atOnce.keys(), (text) => text);
  const later = [...all].filter(([file]) => !atOnce.has(file)).map(([, text]) => text);
  const styles = new Set([html, ...all.values()].flatMap((text) => named(text, 'css', dist)));
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
  return limits.laterJs[picture ? 'picture' : 'plain'] + limits.kitJs + chains;
}
