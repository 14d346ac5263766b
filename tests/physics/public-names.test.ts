import { globSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import * as core from '#core/index.ts';
import { everyFormula } from '#tests/support/every-formula.ts';

const root = resolve(import.meta.dirname, '../..');
const read = (path: string) => readFileSync(resolve(root, path), 'utf8');
const sources = globSync('core/*/**/*.ts', { cwd: root, exclude: ['**/*.test.ts'] }).sort();
const index = read('core/index.ts');

/** What is meant for others has an example in its docstring; what the core only shares within itself has none. */
const withExample = /\/\*\*(?:(?!\*\/)[^])*@example(?:(?!\*\/)[^])*\*\/\s*export (?:function|class|const) (\w+)/g;

const documented = sources.flatMap((path) =>
  [...read(path).matchAll(withExample)].map(([, name]) => ({ path, name: name! })),
);

/** Every name that the index gives out, types included, by the file below `core/` that it takes it from. */
const given = new Map<string, Set<string>>();
for (const [, names, path] of index.matchAll(/export (?:type )?\{([^}]*)\} from '\.\/([^']+)'/g)) {
  const all = names!.split(',').map((name) => /(?:type )?(\w+)(?: as \w+)?\s*$/.exec(name)?.[1] ?? '');
  given.set(path!, new Set([...(given.get(path!) ?? []), ...all.filter(Boolean)]));
}

const imported = /import (?:type )?\{([^}]*)\} from '([^']+\.ts)'/g;

/** The types that the exported functions of a file name in their signatures, each with the file below `core/` that has it. */
function typesInSignatures(path: string, names: ReadonlySet<string>): readonly { path: string; name: string }[] {
  const text = read(`core/${path}`);
  const from = new Map<string, string>();
  for (const [, list, specifier] of text.matchAll(imported)) {
    const target = specifier!.startsWith('#core/')
      ? specifier!.slice('#core/'.length)
      : relative(resolve(root, 'core'), join(root, 'core', dirname(path), specifier!));
    for (const name of list!.split(',')) from.set(name.replace('type ', '').trim(), target);
  }
  for (const [, name] of text.matchAll(/^export (?:interface|type) (\w+)/gm)) from.set(name!, path);
  const signatures = [...text.matchAll(/^export function (\w+)([^]*?)\): ([^]*?) \{$/gm)];
  return signatures
    .filter(([, name]) => names.has(name!))
    .flatMap(([, , parameters, result]) => [...`${parameters} ${result}`.matchAll(/\b[A-Z]\w+/g)].map(([name]) => name))
    .filter((name) => from.has(name))
    .map((name) => ({ name, path: from.get(name)! }));
}

/** The lines that the index lacks for these names, as they are to stand there. */
function missing(wanted: readonly { path: string; name: string }[]): readonly string[] {
  const lacking = wanted.filter(({ path, name }) => !given.get(path)?.has(name));
  return [...new Set(lacking.map(({ path, name }) => `export { ${name} } from './${path}';`))];
}

describe('the core’s public face', () => {
  it('has found what it is to hold', () => {
    expect(documented.length).toBeGreaterThan(150);
    expect(given.size).toBeGreaterThan(200);
  });

  it('holds every function that has an example', () => {
    expect(missing(documented.map(({ path, name }) => ({ path: relative('core', path), name })))).toEqual([]);
    for (const { name } of documented) expect(core).toHaveProperty(name);
  });

  it('holds every formula with its function, and whatever else stands in its file', async () => {
    const formulas = await everyFormula();
    expect(formulas.length).toBeGreaterThan(50);
    const wanted = formulas.flatMap(({ path, exports }) =>
      Object.keys(exports).map((name) => ({ path: relative('core', path), name })),
    );
    expect(missing(wanted)).toEqual([]);
    for (const { name, formula } of formulas) {
      expect(core).toHaveProperty(`${name}Formula`, formula);
      expect(core).toHaveProperty(name, formula.evaluate);
    }
  });

  it('holds every type that its functions take or give', () => {
    const wanted = [...given].flatMap(([path, names]) => typesInSignatures(path, names));
    expect(wanted.length).toBeGreaterThan(200);
    expect(missing(wanted)).toEqual([]);
  });
});
