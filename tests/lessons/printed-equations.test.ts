import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawProblem } from '#core/practice/problem.ts';
import type { ProblemFamily } from '#core/practice/family.ts';
import { workingNumbers } from '#core/practice/working.ts';
import { ofConstant, printedLine } from '#core/quantity/printed-line.ts';
import { numericFormula } from '#site/controls/formula/render.ts';
import { formulaCalled, type AnyFormula, type Lesson } from '#site/lesson/lesson.ts';
import type { AnyBench } from '#site/controls/workbench/workbench.ts';
import { valueOf, type Answer } from '#site/state/answer.ts';
import { formulaLine, type FormulaLine } from '#site/state/formula-line.ts';
import { quantitiesIn, sidesOf } from '#tests/support/every-formula.ts';
import { everyLessonFile, lessonSlugs } from '#tests/support/lessons.ts';
import { readNumber } from '#tests/support/printed-equation.ts';
import { root } from '#tests/support/run.ts';
import { texValue, type TexValue } from '#tests/support/tex-value.ts';
import { anySettingOf, innerSettingOf } from './settings.ts';

/**
 * Every equation of every lesson, taken as a reader takes it: the numbers that are printed on its right are put into its TeX by an
 * algebra library that shares no code with ours, and what comes out is held against the number that is printed as its result.
 */
type Set = Readonly<Record<string, string | number>>;

const benches = new Map(
  (await everyLessonFile('bench.svelte.ts')).map(({ slug, exports }) => [slug, exports['bench'] as AnyBench]),
);
const families = new Map(
  (await everyLessonFile('problems.ts')).map(({ slug, exports }) => [
    slug,
    exports['families'] as readonly ProblemFamily[],
  ]),
);

/** What a lesson's prose shows with numbers, and what each of its examples is set to. */
function shownIn(slug: string): { readonly names: readonly string[]; readonly sets: readonly Set[] } {
  const mdx = readFileSync(join(root, 'lessons', slug, 'lesson.mdx'), 'utf8');
  const formulas = [...mdx.matchAll(/<Formula\s[^>]*?of="([^"]+)"[^>]*>/g)].filter(([tag]) => !/\sbare\b/.test(tag));
  const sets = [...mdx.matchAll(/\sset=\{(\{[^}]*\})\}/g)].map(([, object]) => setIn(object!));
  return { names: [...new Set(formulas.map(([, name]) => name!))], sets };
}

/** The object literal of an example's `set`, which holds numbers and slugs alone. */
function setIn(object: string): Set {
  return JSON.parse(
    object
      .replaceAll(/([{,]\s*)([a-zA-Z][\w-]*):/g, '$1"$2":')
      .replaceAll("'", '"')
      .replace(/,\s*}/, '}'),
  ) as Set;
}

function rightOf({ tex, constant }: AnyFormula, texts: Readonly<Record<string, string>>): TexValue {
  // A constant has the digits that are printed of it.
  return texValue(
    sidesOf(tex).right.replace(constant ? constant.value.toFixed(10) : ' ', (all) =>
      constant ? texts[ofConstant]! : all,
    ),
  );
}

/** What is wrong with an equation as it is printed; undefined where rounding explains all of it. */
function faultOf(formula: AnyFormula, texts: Readonly<Record<string, string>>): string | undefined {
  const { gives, tex } = formula;
  const given = quantitiesIn(sidesOf(tex).right).map((name) => [name, readNumber(name, texts[name]!)] as const);
  const printed = readNumber(gives, texts[gives]!);
  const values = Object.fromEntries(given.map(([name, { value }]) => [name, Number(value.toPrecision(12))]));
  const ours = rightOf(formula, texts)(values);
  if (Math.abs(ours - printed.value) <= printed.half * (1 + 1e-6)) return undefined;
  return `${tex}: ${given.map(([name]) => `${name} ${texts[name]}`).join(', ')} give ${ours}, printed ${texts[gives]}`;
}

/** Settings anywhere, and as many at the ends of ranges. */
const settings = 100;
const settingsOf = (bench: AnyBench) => [
  ...fc.sample(innerSettingOf(bench), { numRuns: settings, seed: 11 }),
  ...fc.sample(anySettingOf(bench), { numRuns: settings, seed: 12 }),
];

describe.each(lessonSlugs())('the equations of %s', (slug) => {
  const bench = benches.get(slug)!;
  const { names, sets } = shownIn(slug);
  const formulas = names.map((name) => formulaCalled(name, { slug, bench } as unknown as Lesson));
  const lines = (answers: Readonly<Record<string, Answer>>) =>
    formulas.map((formula) => ({ formula, line: formulaLine(formula, answers), answers }));

  it('has equations', () => {
    expect(formulas.length).toBeGreaterThan(0);
  });

  it('stand in the page as they are computed, at the start and as the examples are set', () => {
    for (const set of [{}, ...sets]) {
      for (const { formula, line } of lines(bench.atStep(set))) {
        const texts = textsOf(line, formula, set);
        const html = numericFormula(formula, texts);
        const slots = [...html.matchAll(/data-number="([^"]+)">([^<]*)</g)].map(
          ([, name, text]) => [name!, text!] as const,
        );
        expect(new Set<string>(slots.map(([name]) => name))).toEqual(
          new Set([formula.gives, ...formula.from, ...(formula.constant ? [ofConstant] : [])]),
        );
        for (const [name, text] of slots) expect(text, name).toBe(texts[name]);
        expect(faultOf(formula, texts)).toBeUndefined();
      }
    }
  });

  it('are true as printed, wherever the reader goes, or give way to words', () => {
    const faults: string[] = [];
    const withheld: string[] = [];
    let printed = 0;
    for (const setting of settingsOf(bench)) {
      for (const { formula, line, answers } of lines(bench.atStep(Object.fromEntries(new URLSearchParams(setting))))) {
        if ('texts' in line) {
          printed++;
          const fault = faultOf(formula, line.texts);
          if (fault !== undefined) faults.push(`${setting}: ${fault}`);
        } else {
          expect(line.words).not.toMatch(/NaN|undefined|null|\.\.$/);
          if (isWithheld(formula, answers)) withheld.push(`${formula.gives} at ${setting}`);
        }
      }
    }
    expect(faults).toEqual([]);
    // A few hang on a difference of nearly equal numbers, and have no line of so few figures.
    expect(withheld.length, withheld.join('\n')).toBeLessThan(0.01 * printed);
  });

  it('are true in the working of every problem', () => {
    const faults: string[] = [];
    for (const family of families.get(slug)!) {
      for (let seed = 1; seed <= 60; seed++) {
        for (const { formula, numbers } of workingNumbers(family, drawProblem(family, seed).given)) {
          if (!formula) continue;
          // Where a formula ends its line gives way to words, in a working too.
          if (printedLine(formula as AnyFormula, numbers).kind === 'beyond') continue;
          const fault = faultOf(
            formula as AnyFormula,
            textsOf(formulaLine(formula as AnyFormula, numbers), formula, seed),
          );
          if (fault !== undefined) faults.push(`${family.id}, seed ${seed}: ${fault}`);
        }
      }
    }
    expect(faults).toEqual([]);
  });
});

function textsOf(
  line: FormulaLine,
  { gives }: { readonly gives: string },
  where: unknown,
): Readonly<Record<string, string>> {
  if ('texts' in line) return line.texts;
  throw new Error(`${gives} has no numbers at ${JSON.stringify(where)}: ${line.words}`);
}

/** Whether a formula has a finite result from finite numbers and no line of few enough figures. */
function isWithheld(formula: AnyFormula, answers: Readonly<Record<string, Answer>>): boolean {
  const values = Object.entries(answers).map(([name, answer]) => [name, valueOf(answer)]);
  return printedLine(formula, Object.fromEntries(values) as Record<string, number>).kind === 'unprintable';
}
