import { globSync } from 'node:fs';
import { camelCase } from '#core/quantity/formula.ts';
import { quantityOf } from '#core/quantity/vocabulary.ts';
import { course } from '#site/course.ts';
import { everyFormula, type FormulaFile } from '../every-formula.ts';
import { root } from '../run.ts';
import { benchFigure, checkFigure, drawing, islands } from './lesson-figures.ts';
import { prose } from './lesson-prose.ts';
import { Refusal, requireName, type Scaffold } from './scaffold.ts';

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
  return {
    files: {
      [`${folder}/lesson.mdx`]: prose(place.question, file),
      [`${folder}/bench.svelte.ts`]: bench(file),
      [`${folder}/stage.ts`]: stage(file),
      [`${folder}/problems.ts`]: problems(file),
      [`${folder}/figures/Bench.svelte`]: benchFigure(file),
      [`${folder}/figures/Drawing.svelte`]: drawing(file),
      [`${folder}/figures/Check.svelte`]: checkFigure(slug),
      [`${folder}/figures/Islands.astro`]: islands,
    },
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

const key = (id: string) => (/\W/.test(id) ? `'${id}'` : id);
const given = (id: string) => (/\W/.test(id) ? `given['${id}']` : `given.${id}`);
const named = ({ formula }: FormulaFile) => formula.from.map((id) => `${camelCase(id)}: ${given(id)}`).join(', ');

function bench(file: FormulaFile): string {
  const { formula, name, path } = file;
  return `import { ${name} } from '#${path}';
import { Bench } from '#site/state/bench.svelte.ts';

export const bench = new Bench({
  inputs: { ${formula.from.map((id) => `${key(id)}: ${somewhere(id)}`).join(', ')} },
  compute: (given) => ({
    ${key(formula.gives)}: ${name}({ ${named(file)} }),
  }),
});
`;
}

function stage({ formula }: FormulaFile): string {
  const [first = ''] = formula.from;
  return `import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: '⟨… one question for the room⟩',
    caption: '⟨… one caption⟩ {${formula.gives}}',
    set: { ${key(first)}: ${somewhere(first)} },
  },
];
`;
}

function problems(file: FormulaFile): string {
  const { formula, name, path } = file;
  const draws = formula.from.map((id) => `${key(id)}: draw.pick([${somewhere(id)}])`);
  return `import { ${name}, ${name}Formula } from '#${path}';
import { numberFamily } from '#core/practice/family.ts';

const first = numberFamily({
  id: 'first',
  asks: '${formula.gives}',
  question: '⟨… the question⟩ ${formula.from.map((id) => `{${id}}`).join(', ')}',
  givens: (draw) => ({ ${draws.join(', ')} }),
  answer: (given) => ${name}({ ${named(file)} }),
  tolerance: { relative: 0.02, because: '⟨… why that far and no farther⟩' },
  // ⟨… at least two wrong routes that learners take, each with its id, its value and why that number came out⟩
  mistakes: [],
  hint: '⟨… the next thought to have⟩',
  working: [{ formula: ${name}Formula, note: '⟨… what is done and why⟩' }],
});

/** ⟨… four families or more⟩ */
export const families = [first];
`;
}
