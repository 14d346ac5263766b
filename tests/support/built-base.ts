import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './run.ts';

/** The path under which the workbook in `dist` was built, as its first page says. Throws where nothing is built. */
export function builtBase(): string {
  const page = join(root, 'dist/index.html');
  const link = /<link rel="icon" href="([^"]*)favicon\.svg"/.exec(readFileSync(page, 'utf8'));
  if (!link) throw new Error(`${page} links to no favicon.svg, by which it would say where it stands.`);
  return link[1]!;
}
