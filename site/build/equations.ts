import { globSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Plugin } from 'vite';
import { bridges, lastly } from '#core/diagnosis/usual.ts';
import type { Formula } from '#core/quantity/formula.ts';
import { numericFormula, symbolicFormula } from '#site/controls/formula/render.ts';

const root = resolve(import.meta.dirname, '../..');
const name = 'virtual:equations';

type Equations = Readonly<Record<string, readonly [letters: string, numbers: string]>>;

let rendered: Promise<Equations> | undefined;

/** Every equation as a page shows it, by the name of its file: in letters, and with places for its numbers. A build asks twice, and they are rendered once. */
export const everyEquation = (): Promise<Equations> => (rendered ??= renderedEquations());

async function renderedEquations(): Promise<Equations> {
  const files = globSync('core/*/*.formula.ts', { cwd: root }).sort();
  const formulas = await Promise.all(
    files.map(async (file): Promise<[string, Formula<never>]> => {
      const exports = (await import(pathToFileURL(resolve(root, file)).href)) as Record<string, unknown>;
      const formula = Object.entries(exports).find(([one]) => one.endsWith('Formula'))![1] as Formula<never>;
      return [basename(file, '.formula.ts'), formula];
    }),
  );
  const steps = [...bridges, ...lastly.map(({ by }) => by)];
  const all = [...formulas, ...steps.map(({ id, formula }): [string, Formula<never>] => [id, formula])];
  return Object.fromEntries(
    all.map(([id, formula]) => [id, [symbolicFormula(formula.tex), numericFormula(formula, {})]]),
  );
}

/** Vite plugin: the equations as a file of their own, rendered at build and fetched when a reader asks for a working; no formula engine travels. */
export function equations(): Plugin {
  return {
    name: 'equations',
    resolveId: (source) => (source === name ? `\0${name}` : undefined),
    load: async (id) =>
      id === `\0${name}` ? `export const equations = ${JSON.stringify(await everyEquation())};` : undefined,
  };
}
