import { globSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Plugin } from 'vite';
import type { ProblemFamily } from '#core/practice/family.ts';
import { numericFormula, symbolicFormula } from '#site/controls/formula/render.ts';
import { textsOf } from '#site/controls/practice/texts.ts';

const root = resolve(import.meta.dirname, '../..');
const name = 'virtual:problem-texts';

const exportsOf = async (file: string) =>
  (await import(pathToFileURL(resolve(root, file)).href)) as Readonly<Record<string, unknown>>;

/** The words of a lesson's problems by family, and of each step of the working the equation, by the name of its file or as it stands in the page. */
export async function textsOfLesson(lesson: string) {
  const { families } = (await exportsOf(`lessons/${lesson}/problems.ts`)) as { families: readonly ProblemFamily[] };
  const files = globSync('core/*/*.formula.ts', { cwd: root });
  const formulas = await Promise.all(
    files.map(async (file): Promise<[unknown, string]> => {
      const found = Object.entries(await exportsOf(file)).find(([one]) => one.endsWith('Formula'));
      return [found![1], basename(file, '.formula.ts')];
    }),
  );
  const ids = new Map(formulas);
  return Object.fromEntries(
    families.map((family) => {
      const equations = family.working.map(({ formula }) => {
        if (!formula) return null;
        // A step that turns a formula of the core round has an equation of its own.
        return ids.get(formula) ?? [symbolicFormula(formula.tex), numericFormula(formula as never, {})];
      });
      return [family.id, { ...textsOf(family), equations }];
    }),
  );
}

/** Vite plugin: the words of every lesson's problems for the page that asks of all lessons, a file a lesson, fetched when it is asked of. */
export function problemTexts(): Plugin {
  return {
    name: 'problem-texts',
    resolveId: (source) => (source.startsWith(name) ? `\0${source}` : undefined),
    async load(id) {
      if (!id.startsWith(`\0${name}`)) return undefined;
      const lesson = id.slice(name.length + 2);
      if (lesson !== '') return `export const texts = ${JSON.stringify(await textsOfLesson(lesson))};`;
      const lessons = globSync('lessons/*/problems.ts', { cwd: root }).map((file) => file.split(/[\\/]/)[1]!);
      const fetches = lessons.map((one) => `${JSON.stringify(one)}: () => import('${name}/${one}')`);
      return `export const textsOf = { ${fetches.join(', ')} };`;
    },
  };
}
