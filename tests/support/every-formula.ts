import { globSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { camelCase, type Formula } from '#core/quantity/formula.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';

/** A formula whose inputs are known only at run time. */
export type AnyFormula = Formula<never>;

export interface FormulaFile {
  /** From the repository's root: `core/depth/near-limit.formula.ts`. */
  readonly path: string;
  /** The function's name, which the file's name prescribes: `nearLimit`. */
  readonly name: string;
  readonly formula: AnyFormula;
  readonly exports: Readonly<Record<string, unknown>>;
}

const root = resolve(import.meta.dirname, '../..');

/** Every formula file of the core, in the order of their paths. Throws where there is none, or one exports no formula. */
export async function everyFormula(): Promise<readonly FormulaFile[]> {
  const paths = globSync('core/*/*.formula.ts', { cwd: root }).sort();
  if (paths.length === 0) throw new Error(`no core/*/*.formula.ts below ${root}`);
  return Promise.all(paths.map(readFormula));
}

async function readFormula(path: string): Promise<FormulaFile> {
  const name = camelCase(basename(path, '.formula.ts'));
  const exports = (await import(pathToFileURL(resolve(root, path)).href)) as Record<string, unknown>;
  const formula = exports[`${name}Formula`];
  if (formula === undefined) {
    throw new Error(
      `${path} exports ${Object.keys(exports).join(', ') || 'nothing'}; it must export ${name} and ${name}Formula`,
    );
  }
  return { path, name, formula: formula as AnyFormula, exports };
}

/** What stands on the two sides of a formula's TeX. Throws unless it is one equation with one quantity on its left. */
export function sidesOf(tex: string): { left: QuantityName; right: string } {
  const sides = /^\\q\{([a-z.-]+)\} = ([^=]+)$/.exec(tex);
  if (!sides) throw new Error(`expected \\q{id} = ..., one equation; found ${tex}`);
  return { left: sides[1] as QuantityName, right: sides[2]! };
}

/** The quantities that a piece of TeX names, each once, in the order of their first appearance. */
export function quantitiesIn(tex: string): readonly QuantityName[] {
  return [...new Set([...tex.matchAll(/\\q\{([^}]*)\}/g)].map((match) => match[1] as QuantityName))];
}
