import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterBuild } from '#site/build/after-build.ts';
import { editionOf } from './edition.ts';
import { workerSource } from './worker-source.ts';

/** Astro integration: after the build, writes the worker that keeps the whole workbook at hand after one visit. */
export const offline = () =>
  afterBuild('offline', async ({ folder, base }) =>
    writeFile(join(folder, 'worker.js'), workerSource(await editionOf(folder, base))),
  );
