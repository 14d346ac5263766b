import { existsSync, globSync, readdirSync } from 'node:fs';
import { join, sep } from 'node:path';
import { root } from '../support/run.ts';

export const dist = join(root, 'dist');

/** Every built page as its path below the base, `lessons/extension/` for `dist/lessons/extension/index.html`. */
export function builtPages(): string[] {
  if (!existsSync(dist)) throw new Error('There is no dist folder: run "npm run build" first.');
  return globSync('**/*.html', { cwd: dist })
    .map((file) =>
      file
        .split(sep)
        .join('/')
        .replace(/(^|\/)index\.html$/, '$1'),
    )
    .sort();
}

/** Those of *pages* that are lessons: the last folder of their path is a folder of `lessons/`. */
export function lessonPages(pages: readonly string[]): string[] {
  const slugs = new Set(readdirSync(join(root, 'lessons')));
  return pages.filter((page) => slugs.has(page.split('/').at(-2) ?? ''));
}

/** The file of a page. */
export const fileOf = (page: string) => join(dist, page.endsWith('.html') ? page : `${page}index.html`);
