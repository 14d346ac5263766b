import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import type { Edition, EditionFile } from './worker-source.ts';

/** The edition that the built *folder* holds, to be put at *base*: every file but the worker itself and source maps. */
export async function editionOf(folder: string, base: string): Promise<Edition> {
  const files = await Promise.all((await filesBelow(folder)).map((file) => editionFile(folder, file, base)));
  const name = createHash('sha256').update(JSON.stringify(files)).digest('hex').slice(0, 16);
  return { base, name, files };
}

async function filesBelow(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile() && entry.name !== 'worker.js' && !entry.name.endsWith('.map'))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

async function editionFile(folder: string, file: string, base: string): Promise<EditionFile> {
  const inside = relative(folder, file).split(sep).join('/');
  const content = await readFile(file);
  const digest = createHash('sha256').update(content).digest('base64');
  return { path: base + inside.replace(/index\.html$/, ''), integrity: `sha256-${digest}`, bytes: content.length };
}
