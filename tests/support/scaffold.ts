/** Begins a new piece in the shape of the exemplar: `npm run scaffold -- formula|check|lesson …`. Overwrites nothing. */
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { format, resolveConfig } from 'prettier';
import { root } from './run.ts';
import { check } from './scaffold/check.ts';
import { formula } from './scaffold/formula.ts';
import { lesson } from './scaffold/lesson.ts';
import { Refusal, type Scaffold } from './scaffold/scaffold.ts';

const kinds: Readonly<Record<string, (args: readonly string[]) => Scaffold | Promise<Scaffold>>> = {
  lesson,
  formula,
  check,
};

const [kind = '', ...args] = process.argv.slice(2);
try {
  const begin = kinds[kind];
  if (!begin)
    throw new Refusal(
      `Nothing to scaffold called "${kind}". Write: npm run scaffold -- ${Object.keys(kinds).join('|')} …`,
    );
  const { files, next } = await begin(args);

  const present = Object.keys(files).filter((file) => existsSync(join(root, file)));
  if (present.length > 0) throw new Refusal(`There already, and left alone: ${present.join(', ')}`);
  for (const [file, text] of Object.entries(files)) {
    const path = join(root, file);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, await format(text, { ...(await resolveConfig(path)), filepath: path }));
    process.stdout.write(`wrote ${file}\n`);
  }
  process.stdout.write(`\nThe tests fail until it is filled in:\n${next.map((step) => `- ${step}\n`).join('')}`);
} catch (error) {
  if (!(error instanceof Refusal)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 1;
}
