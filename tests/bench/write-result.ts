import { mkdirSync, writeFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { format } from 'prettier';
import { root } from '../support/run.ts';

/** Writes one file of results, laid out as the rest of the project is. */
export async function writeResult(file: string, text: string): Promise<void> {
  const folder = join(root, 'tests', 'bench', 'results');
  mkdirSync(folder, { recursive: true });
  const parser = extname(file) === '.md' ? 'markdown' : 'json';
  writeFileSync(join(folder, file), await format(text, { printWidth: 120, singleQuote: true, parser }));
  process.stdout.write(`\nWritten to tests/bench/results/${file}.\n`);
}
