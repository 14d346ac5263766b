import { globSync } from 'node:fs';
import { quantityOf } from '#core/quantity/vocabulary.ts';
import { course } from '#site/course.ts';
import { everyFormula, type FormulaFile } from '../every-formula.ts';
import { root } from '../run.ts';
import { Refusal, requireName, type Scaffold } from './scaffold.ts';
import { filledTemplates } from './template.ts';

const usage =
  'Write: npm run scaffold -- lesson <slug> <topic>/<formula>, e.g. working-distance gaussian/working-distance';

/** A lesson about one formula: it builds and can be played with; its tests fail until the words and problems are there. */
export async function lesson([slug = '', about = '']: readonly string[]): Promise<Scaffold> {
  requireName(slug, usage);
  const place = course.find((one) => one.slug === slug);
  if (!place)
    throw new Refusal(`The course has no lesson "${slug}": give it its place in site/course.ts first. ${usage}`);
  const path = `core/${about}.formula.ts`;
  if (about === '' || globSync(path, { cwd: root }).length === 0) throw new Refusal(`There is no ${path}. ${usage}`);
  const file = (await everyFormula()).find((formula) => formula.path === path) as FormulaFile;

  const folder = `lessons/${slug}`;
  const files = Object.entries(filledTemplates('lesson', marksOf(place.question, file)));
  return {
    files: Object.fromEntries(files.map(([name, text]) => [`${folder}/${name}`, text])),
    next: [
      `npm run dev, and open lessons/${slug}/: the figure already computes.`,
      `Draw ${folder}/figures/Drawing.svelte to scale; what two lessons share goes to site/figures/.`,
      `Write the parts in lesson.mdx, the demonstration in stage.ts and four families in problems.ts, where ⟨… stands.`,
      'npx vitest run tests/lessons tests/support/scaffold',
    ],
  };
}

/** A round number well inside a quantity's range, to start from. */
function somewhere(id: string): number {
  const { least, most, scale } = quantityOf(id as Parameters<typeof quantityOf>[0]);
  return Number((scale === 'log' ? Math.sqrt(least * most) : (least + most) / 2).toPrecision(1));
}

function marksOf(question: string, { name, path, formula }: FormulaFile): Readonly<Record<string, string>> {
  const from: readonly string[] = formula.from;
  const starts = from.map((id) => `'${id}': ${somewhere(id)}`);
  return {
    question,
    name,
    path,
    gives: formula.gives,
    starts: starts.join(', '),
    firstStart: starts[0]!,
    marks: from.map((id) => `{${id}}`).join(', '),
    draws: from.map((id) => `'${id}': draw.pick([${somewhere(id)}])`).join(', '),
  };
}
