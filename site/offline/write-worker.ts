import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { editionOf } from './edition.ts';
import { workerSource } from './worker-source.ts';

/** Astro integration: after the build, writes the worker that keeps the whole workbook at hand after one visit. */
export function offline(): AstroIntegration {
  let base = '/';
  return {
    name: 'offline',
    hooks: {
      'astro:config:done': ({ config }) => {
        base = config.base.endsWith('/') ? config.base : `${config.base}/`;
      },
      'astro:build:done': async ({ dir }) => {
        const folder = fileURLToPath(dir);
        await writeFile(join(folder, 'worker.js'), workerSource(await editionOf(folder, base)));
      },
    },
  };
}
