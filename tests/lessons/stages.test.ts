import { describe, expect, it } from 'vitest';
import { isQuantityId } from '#core/quantity/vocabulary.ts';
import type { AnyBench } from '#site/controls/workbench/workbench.ts';
import { printerFor } from '#site/controls/workbench/workbench.ts';
import { settingAt, type Setting, type StageStep } from '#site/stage/step.ts';
import { fillCaption } from '#site/stage/steps.ts';
import { printAnswer } from '#site/state/answer.ts';
import { everyLessonFile } from '#tests/support/lessons.ts';

/** What a hall reads at a glance, in letters. */
const longest = 110;

const benches = new Map((await everyLessonFile('bench.svelte.ts')).map(({ slug, exports }) => [slug, exports]));
const lessons = (await everyLessonFile('stage.ts')).map(({ slug, exports }) => ({
  slug,
  stage: exports['stage'] as readonly StageStep[],
  bench: benches.get(slug)!['bench'] as AnyBench,
}));

describe.each(lessons)('the demonstration of $slug', ({ stage, bench }) => {
  const shown = (setting: Setting, { sheet = '' }: StageStep) =>
    JSON.stringify([sheet, bench.stateAfter(new URLSearchParams(setting as Record<string, string>).toString())]);
  const steps = stage.map((step, index) => ({
    step: index + 1,
    withheld: step.withheld ?? [],
    asked: shown(settingAt(stage, { step: index + 1, answered: false }), step),
    answered: shown(settingAt(stage, { step: index + 1, answered: true }), step),
    caption: fillCaption(step.caption, printerFor(bench.atStep(step.set ?? {}), printAnswer)),
    question: step.question,
  }));

  it('has ids that links, plans and papers can carry, each once, and none that reads like a place or an answer', () => {
    const ids = stage.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/);
    expect(ids.filter((id) => id.length < 3 || id.length > 20)).toEqual([]);
  });

  it('asks one thing at a time, with no mark that nobody fills', () => {
    for (const { question } of steps) expect(question).toMatch(/^[^{}]*\?$/);
  });

  it('has hands shown for two to four things, each once and in few words, one of which is so', () => {
    for (const { options, holds } of stage) {
      expect(options.length).toBeGreaterThanOrEqual(2);
      expect(options.length).toBeLessThanOrEqual(4);
      expect(new Set(options).size).toBe(options.length);
      expect(Object.keys(options)).toContain(`${holds}`);
      for (const option of options) expect(option).toMatch(/^\S(?:.{0,30}\S)?$/);
    }
  });

  it('says yes where yes is so, and no where no is', () => {
    // A caption says the answer first; where it says it in other words, those are no yes.
    const opposed = stage.filter(({ options, holds, caption }) => {
      const [said] = /^(Yes|No)\b(?! )/.exec(caption) ?? [];
      return said !== undefined && options.includes(said) && options[holds] !== said;
    });
    expect(opposed.map(({ question }) => question)).toEqual([]);
  });

  it('asks in words that nothing has to be filled into', () => {
    expect(steps.map(({ question }) => question).filter((question) => /[{}]/.test(question))).toEqual([]);
  });

  it('has captions that a hall reads at a glance, every mark filled', () => {
    const faulty = steps.filter(({ caption }) => caption.length > longest || /[{}]/.test(caption));
    expect(faulty.map(({ caption }) => caption)).toEqual([]);
  });

  it.each(steps)('shows no answer in the figure while step $step is asked', ({ asked, answered, withheld }) => {
    if (withheld.length === 0) expect(asked).not.toBe(answered);
  });

  it('withholds only quantities that the vocabulary knows', () => {
    // A part of something is named before the quantity: bright.film-thickness.
    const names = stage.flatMap(({ withheld = [] }) => withheld.map((name) => name.slice(name.lastIndexOf('.') + 1)));
    expect(names.filter((name) => !isQuantityId(name))).toEqual([]);
  });

  it('never shows one figure for two answers in a row', () => {
    const same = steps.filter(({ answered }, index) => answered === steps[index - 1]?.answered);
    expect(same.map(({ step }) => step)).toEqual([]);
  });
});
