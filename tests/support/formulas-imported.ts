import { readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { root } from './run.ts';

const importing = /^(?:import|export)\s(?!type\b)[^;]*?from '([^']+)'/gm;

/**
 * The formula files that a test's helper takes from the core by name: in itself, or in the files of `tests/` that it imports.
 * What the core's own files use of each other does not count.
 *
 * @param file from the repository's root, with forward slashes
 * @returns paths from the repository's root
 */
export function formulasImported(file: string, seen = new Set<string>()): ReadonlySet<string> {
  seen.add(file);
  const imported = [...readFileSync(join(root, file), 'utf8').matchAll(importing)].map(([, from]) => at(from!, file));
  const formulas = imported.filter((path) => path.startsWith('core/') && path.endsWith('.formula.ts'));
  const helpers = imported.filter((path) => path.startsWith('tests/') && path.endsWith('.ts') && !seen.has(path));
  return new Set([...formulas, ...helpers.flatMap((helper) => [...formulasImported(helper, seen)])]);
}

/** `#core/x.ts` and `./x.ts` as paths from the root; packages come back as they are. */
function at(from: string, file: string): string {
  if (from.startsWith('#')) return from.slice(1);
  return from.startsWith('.') ? posix.join(dirname(file), from) : from;
}
