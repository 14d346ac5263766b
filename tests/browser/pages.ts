import { globSync } from 'node:fs';
import { root } from '../support/run.ts';

/** Every built page, as a path relative to the site's base; a build without lessons is a fault of the build. */
export const pages = globSync('**/index.html', { cwd: `${root}/dist` }).map((file) => file.replace(/index\.html$/, ''));

export const lessons = pages.filter((path) => path.startsWith('lessons/'));

/** For what all lessons share and none can do differently: one with one sheet and one with three. */
export const [plain, ofSheets] = ['lessons/extension/', 'lessons/stacking/'] as const;

/** Both, for what sheets may have a part in. */
export const sharing: readonly string[] = [plain, ofSheets];

/** The pages that are no lessons. */
export const others = pages.filter((path) => !lessons.includes(path));

if (lessons.length === 0) throw new Error('No lessons in dist: run "npm run build" first.');
if (!sharing.every((path) => lessons.includes(path))) throw new Error(`Not all of ${sharing.join(', ')} are lessons.`);
