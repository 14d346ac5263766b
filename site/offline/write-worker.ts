import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
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
        const files = await filesBelow(folder);
        const paths = files.map(
          (file) =>
            base +
            relative(folder, file)
              .split(sep)
              .join('/')
              .replace(/index\.html$/, ''),
        );
        await writeFile(join(folder, 'worker.js'), workerSource(paths.sort(), await digest(files)));
      },
    },
  };
}

async function filesBelow(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile() && entry.name !== 'worker.js' && !entry.name.endsWith('.map'))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

/** Changes whenever any file of the site does, so that a new edition replaces the old one as a whole. */
async function digest(files: readonly string[]): Promise<string> {
  const hash = createHash('sha256');
  for (const file of files) hash.update(await readFile(file));
  return hash.digest('hex').slice(0, 16);
}
