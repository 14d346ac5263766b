import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { lessonIn } from '#site/lesson/lesson.ts';
import { lessonSlugs } from '#tests/support/lessons.ts';
import { catalogueFrom } from './catalogue-from.ts';
import { gearFor } from './gear.ts';
import { minutesOf, planOf, type Plan } from './plan.ts';
import { readyPlans } from './ready.ts';
import { readPlan } from './schema.ts';
import { addressesByName, namesByNumber } from './by-number.ts';
import { readHash } from './carry.ts';
import firstPlan from './first-plan.json' with { type: 'json' };
import { readStepName } from './step-number.ts';

const texts = Object.fromEntries(
  lessonSlugs().map((slug) => {
    const prose = readFileSync(`lessons/${slug}/lesson.mdx`, 'utf8');
    const [, bring = ''] = /^bring: \[(.+)\]$/m.exec(prose)!;
    return [slug, { question: `${slug}?`, summary: slug, minutes: 25, bring: bring.split(', '), prose }];
  }),
);
const catalogue = catalogueFrom(texts, lessonIn);
const steps = Object.fromEntries(
  Object.values(catalogue).map(({ slug, steps: all, first }) => [slug, { ids: all.map(({ id }) => id), first }]),
);

describe('the ready plans', () => {
  it('take 60 and 120 minutes', () => {
    expect(readyPlans.map(({ title, items }) => [title, minutesOf(items)])).toEqual([
      ['What does each ring buy?', 60],
      ['From life size to a stack', 120],
    ]);
  });

  it.each(readyPlans)('“$title” is a plan as any is, of steps that there are', (plan) => {
    expect(readPlan(JSON.parse(JSON.stringify(plan)), steps)).toEqual({ kind: 'plan', plan });
  });

  it('asks of a beetle what a ring gives: life size is far, and the nearest ring is the third', () => {
    // From the formula of the lesson on rings, m = m₀ + E/f, with the sums that the answer shows.
    const magnifications = [12, 24, 36].map((ring) => 0.15 + ring / 50);
    const nearest = magnifications.map((m) => Math.abs(36 / m - 40));
    expect(nearest.indexOf(Math.min(...nearest))).toBe(2);
    expect(magnifications[2]).toBeCloseTo(0.87, 10);
    expect(Math.round(36 / 0.87)).toBe(41);
  });

  it('asks how many frames reach 2.4 mm', () => {
    const reach = (frames: number) => 0.5 + (frames - 1) * 0.75 * 0.5;
    expect([6, 7].map((frames) => reach(frames) >= 2.4)).toEqual([false, true]);
  });
});

describe('a plan of the first version', () => {
  const { plan, hash, ids } = firstPlan;

  it('still opens, each of its steps the one that it meant, from its file and from its link', async () => {
    for (const reading of [readPlan(plan, steps), await readHash(hash, steps)]) {
      expect(reading).toMatchObject({ kind: 'plan', plan: { version: 2, title: plan.title } });
      const { items } = (reading as { plan: Plan }).plan;
      expect(items.map((item) => (item.kind === 'step' ? item.step : item.kind))).toEqual(ids);
      expect(minutesOf(items)).toBe(120);
    }
  });
});

describe('what an evening knows of the lessons', () => {
  it('fills every caption, and leaves no mark of the prose in what is said', () => {
    const said = Object.values(catalogue).flatMap(({ steps, caution, opening, roomAsks }) => [
      ...steps.map(({ answer }) => answer),
      caution,
      opening,
      ...roomAsks.flatMap(({ asks, says }) => [asks, says]),
    ]);
    expect(said.length).toBeGreaterThan(200);
    expect(said.filter((text) => /[{}<>*]|\]\(/.test(text))).toEqual([]);
  });

  it('has what each lesson tells its instructor first, and what rooms ask of most', () => {
    expect(Object.values(catalogue).filter(({ opening }) => opening === '')).toEqual([]);
    expect(Object.values(catalogue).filter(({ roomAsks }) => roomAsks.length === 0)).toEqual([]);
    expect(catalogue['extension']!.opening).toMatch(/^About 25 minutes with a camera on the table/);
    expect(catalogue['extension']!.opening).not.toContain('projected view');
  });

  it('gives each step and each answer a name, which leads where the step sets the figure', () => {
    const leads = addressesByName(catalogue);
    const count = Object.values(catalogue).reduce((sum, one) => sum + 2 * one.steps.length, 0);
    expect(Object.keys(leads)).toHaveLength(count);
    expect(leads['extension.three-rings.a']).toBe('lessons/extension/?extension=72');
    expect(leads['extension.no-ring']).toBe('lessons/extension/');
    expect(Object.values(leads).filter((address) => /stage|answered/.test(address))).toEqual([]);
    for (const name of Object.keys(leads)) expect(readStepName(name)).toBe(name);
  });

  it('knows what a number of an older paper meant, and says of a step that has gone that it has', () => {
    const numbers = namesByNumber(catalogue);
    const leads = addressesByName(catalogue);
    expect(numbers['4-3a']).toBe('extension.three-rings.a');
    expect(numbers['21-7']).toBe('soap-film.focus');
    for (const [number, name] of Object.entries(numbers)) {
      expect(readStepName(number)).toBe(number);
      expect(name === '' || name in leads).toBe(true);
    }
    const { extension, ...others } = catalogue;
    const fewer = { ...others, extension: { ...extension!, steps: extension!.steps.slice(3) } };
    expect([namesByNumber(fewer)['4-3a'], namesByNumber(fewer)['4-4']]).toEqual(['', 'extension.light']);
  });

  it('reads a name or a number as people type it', () => {
    for (const typed of ['4-3A', ' 4 3 a', '4.3a', '4–03a']) expect(readStepName(typed)).toBe('4-3a');
    for (const typed of ['Extension.Three-Rings.A', ' extension three-rings a ', 'extension/three-rings, a'])
      expect(readStepName(typed)).toBe('extension.three-rings.a');
    for (const typed of ['extension.three-rings.', '“Extension.three-rings!”'.slice(1), 'extension three-rings.)'])
      expect(readStepName(typed)).toBe('extension.three-rings');
    expect([readStepName('extension.three-rings.a.'), readStepName('4-3.')]).toEqual([
      'extension.three-rings.a',
      '4-3',
    ]);
    for (const typed of ['', '.', '4', 'a', '4-', '123-1', '<b>', 'extension', 'extension.three-rings.b.a'])
      expect(readStepName(typed)).toBeUndefined();
  });

  it('names the formulas of each lesson that explains any, by files that there are', () => {
    const names = Object.values(catalogue).map(({ formulas }) => formulas);
    expect(names.filter((one) => one.length === 0).length).toBeLessThan(3);
    expect(catalogue['extension']!.formulas).toEqual([
      'magnification-from-extension',
      'subject-distance',
      'working-distance',
    ]);
  });

  it('lists what is to be brought once, and a thing for the table not beside the same for everybody', () => {
    const plan = planOf(
      'x',
      ['life-size', 'extension', 'reversed'].map((lesson) => ({
        kind: 'step',
        lesson,
        step: catalogue[lesson]!.steps[0]!.id,
        minutes: 3,
      })),
    );
    const gear = gearFor(plan, catalogue);
    expect(gear).toContain('a ruler for each');
    expect(gear).not.toContain('a ruler');
    expect(new Set(gear).size).toBe(gear.length);
  });
});
