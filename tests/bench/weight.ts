/** What a page ships, read from the built files: everything that it names, at gzip size. */
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { builtBase } from '../support/built-base.ts';
import { dist, fileOf } from './built.ts';

export interface Weight {
  /** Bytes of gzip: of the page's HTML, of all JavaScript it can come to load, and of its stylesheets. */
  readonly html: number;
  readonly js: number;
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

/**
 * The texts of all modules that can be reached from *start*, by static and by dynamic imports: whatever a module names in quotes is followed.
 * The worker that keeps the site for use offline is registered by a computed name and is no part of the page.
 */
function reachable(start: readonly string[]): readonly string[] {
  const files = new Set(start);
  const texts: string[] = [];
  for (const file of files) {
    const text = readFileSync(file, 'utf8');
    texts.push(text);
    for (const next of named(text, 'js', dirname(file))) files.add(next);
  }
  return texts;
}

export function weightOf(page: string): Weight {
  const html = readFileSync(fileOf(page), 'utf8');
  const inline = [...html.matchAll(/<script(?![^>]*\bsrc=)[^>]*>(.*?)<\/script>/gs)].map(([, code = '']) => code);
  const modules = reachable(named(html + inline.join('\n'), 'js', dirname(fileOf(page))));
  const styles = new Set([html, ...modules].flatMap((text) => named(text, 'css', dist)));
  return {
    picture: modules.some((text) => text.includes('new Worker(')),
    html: gzipSize(html),
    js: sizeOf(modules) + gzipSize(inline.join('\n')),
    css: sizeOf([...styles].map((file) => readFileSync(file, 'utf8'))),
  };
}
