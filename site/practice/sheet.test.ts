import { readFileSync, writeFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seedFromText } from '#core/chance/seed-from-text.ts';
import type { ProblemFamily } from '#core/practice/family.ts';
import { drawProblem } from '#core/practice/problem.ts';
import type { SheetKind, SheetProblem } from '#core/practice/versions.ts';
import { everyLessonFile } from '#tests/support/lessons.ts';
import { editions, newest } from './editions.ts';
import {
  drawnFrom,
  everyKind,
  mostProblems,
  newSheet,
  readSheetText,
  sheetText,
  versions,
  type SheetPlan,
} from './sheet.ts';

const files = await everyLessonFile('problems.ts');
const families: readonly SheetKind[] = files.flatMap(({ slug, exports }) =>
  (exports['families'] as readonly ProblemFamily[]).map((family) => ({ lesson: slug, family })),
);
const named = (sheet: readonly SheetProblem[]) =>
  sheet.map(({ lesson, problem }) => `${lesson}/${problem.family.id}:${problem.seed}`);
const planOf = (text: string): SheetPlan => {
  const reading = readSheetText(text);
  if (reading.kind !== 'value') throw new Error(reading.message);
  return reading.plan;
};

/** What was drawn when the edition was made: sheets are on paper, in people's hands. */
const frozenFile = new URL('./frozen-sheets.json', import.meta.url).pathname;

/** The numbers of a kind's first twenty problems, their answers and where their slips lead, as one number; to nine figures, as all browsers give them. */
function printOf({ family }: SheetKind): number {
  const round = (value: unknown) => (typeof value === 'number' ? Number(value.toPrecision(9)) : value);
  const drawn = Array.from({ length: 20 }, (_, index) => {
    const { given, answer } = drawProblem(family, index + 1);
    return [Object.entries(given).map(([name, value]) => [name, round(value)]), round(answer)];
  });
  return seedFromText(JSON.stringify(drawn));
}

const frozenNow = () => ({
  sheets: Object.fromEntries(
    ['a-all-24-A-1', 'a-all-24-D-4821', 'a-4-8-B-12', 'a-1.4ac.21-12-C-999999'].map((text) => [
      text,
      named(drawnFrom(planOf(text), families)),
    ]),
  ),
  kinds: Object.fromEntries(families.map((kind) => [`${kind.lesson}/${kind.family.id}`, printOf(kind)])),
});

const anyPlan = fc
  .record({
    kinds: fc.subarray([...everyKind], { minLength: 1 }),
    seed: fc.integer({ min: 1, max: 999_999 }),
    count: fc.integer({ min: 1, max: mostProblems }),
    version: fc.constantFrom(...versions),
  })
  .map(({ kinds, seed, count, version }) => newSheet(kinds, seed, count, version));

describe('an edition', () => {
  it('has every kind of problem of every lesson, in the newest', () => {
    const name = ({ lesson, family }: { lesson: string; family: string }) => `${lesson}/${family}`;
    const all = families.map(({ lesson, family }) => name({ lesson, family: family.id }));
    expect(everyKind.map(name).sort(), 'give the next edition a letter of its own').toEqual(all.sort());
    expect(newest).toBe(Object.keys(editions).sort().at(-1));
  });

  it('asks what it asked when it was made: who changes what a kind draws makes a kind of another name', () => {
    const now = frozenNow();
    // FREEZE=1 writes it, once for each edition: the lines of those before stay as they are.
    if (process.env['FREEZE']) writeFileSync(frozenFile, `${JSON.stringify(now, undefined, 1)}\n`);
    expect(now).toEqual(JSON.parse(readFileSync(frozenFile, 'utf8')));
  });
});

describe('the text of a sheet', () => {
  it('is short enough to be read out', () => {
    expect(sheetText(newSheet(everyKind, 4821, 12, 'B'))).toBe('a-all-12-B-4821');
    const extension = everyKind.filter(({ lesson }) => lesson === 'extension');
    expect(sheetText(newSheet(extension, 7))).toBe('a-4-8-A-7');
    expect(sheetText(newSheet([extension[2]!, everyKind[0]!, extension[0]!], 7))).toBe('a-1a.4ac-8-A-7');
  });

  it('is read back as the plan it was written for', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        expect(readSheetText(sheetText(plan))).toEqual({ kind: 'value', plan });
      }),
      { seed: 1 },
    );
  });

  it.each([
    ['', 'five parts'],
    ['a-4-8-A', 'five parts'],
    ['z-4-8-A-7', 'of edition “z”'],
    ['constructor-4-8-A-7', 'of edition “construc”'],
    ['a-22-8-A-7', 'numbers from 1 to 21'],
    ['a-0-8-A-7', 'numbers from 1 to 21'],
    ['a-4e-8-A-7', 'lesson 4 has 4 kinds, from a on'],
    ['a--8-A-7', 'numbers from 1 to 21'],
    ['a-4-25-A-7', '1 to 24 problems'],
    ['a-4-0-A-7', '1 to 24 problems'],
    ['a-4-8-E-7', 'A, B, C or D'],
    ['a-4-8-A-0', 'from 1 to 999999'],
    ['a-4-8-A-1000000', 'from 1 to 999999'],
    ['a-4-8-A-1e3', 'from 1 to 999999'],
  ])('says of “%s” what is wrong', (text, words) => {
    const reading = readSheetText(text);
    expect(reading.kind === 'unreadable' && reading.message).toContain(words);
  });

  it('is read or refused, whatever it is, and quoted back only in part', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        const reading = readSheetText(text);
        if (reading.kind === 'unreadable') expect(reading.message.length).toBeLessThan(240);
      }),
      { seed: 1 },
    );
  });
});

describe('a sheet', () => {
  it('repeats no question, has as many as it says, and its versions ask the same kinds in the same order', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const all = versions.map((version) => drawnFrom({ ...plan, version }, families));
        const kindsOf = (sheet: readonly SheetProblem[]) => sheet.map(({ problem }) => problem.family);
        for (const sheet of all) {
          expect(new Set(sheet.map(({ problem }) => problem.question)).size).toBe(sheet.length);
          expect(kindsOf(sheet)).toEqual(kindsOf(all[0]!));
          if (plan.kinds.length > 3) expect(sheet).toHaveLength(plan.count);
        }
      }),
      { seed: 2, numRuns: 25 },
    );
  });

  it('shares no question between its versions where each kind comes once', () => {
    const all = versions.flatMap((version) => drawnFrom(newSheet(everyKind, 5, 24, version), families));
    expect(new Set(all.map(({ problem }) => problem.question)).size).toBe(all.length);
  });
});
