import { globSync } from 'node:fs';
import { root } from '../support/run.ts';

/** Every built page, as a path relative to the site's base; a build without lessons is a fault of the build. */
export const pages = globSync('**/index.html', { cwd: `${root}/dist` }).map((file) => file.replace(/index\.html$/, ''));

export const lessons = pages.filter((path) => path.startsWith('lessons/'));

/**
 * Two of them, with one sheet and with three: for what all lessons share and none can do differently. What no sheet has a part in is tried on one
 * of them, in turn.
 */
export const sharing = lessons.filter((path) => /\/(?:extension|stacking)\//.test(path));

/** The pages that are no lessons. */
export const others = pages.filter((path) => !lessons.includes(path));

if (lessons.length === 0) throw new Error('No lessons in dist: run "npm run build" first.');
if (sharing.length !== 2)
  throw new Error(`What lessons share is walked through on two of them, here on ${sharing.length}.`);

export const [plain, ofSheets] = sharing as [string, string];
