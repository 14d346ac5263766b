import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { settingAt } from '#site/stage/step.ts';
import { root } from '#tests/support/run.ts';
import { bench } from './bench.svelte.ts';
import { areGood, decisionsOf } from './figures/decisions.ts';
import { subjects } from './figures/subjects.ts';
import { stage } from './stage.ts';

afterEach(() => void bench.read(''));

function decisionsAt(search: string) {
  bench.read(search);
  return decisionsOf({
    ...bench.named('working-distance', 'flight-distance', 'subject-depth', 'magnification', 'effective-f-number'),
    ...bench.named('circle-of-confusion', 'wavelength', 'frame-count', 'in-time.frame-count'),
    ...bench.named('ambient.exposure-time', 'slowest.exposure-time', 'needed.flash-power'),
    ...bench.named('flash-distance', 'source-size'),
  });
}

const prose = readFileSync(join(root, 'lessons/planning-a-picture/lesson.mdx'), 'utf8');
/** The links of the list of subjects, as addresses. */
const links = [...prose.matchAll(/^\d\. \[[^\]]+\]\((\?[^)]*sheet=card)\)/gm)].map(([, search]) => search!);

describe('the plan that the page begins with', () => {
  it('fails at the frames alone: the spider walks off before the last', () => {
    expect(decisionsAt('')).toEqual({ hasRoom: true, frames: 'too-slow', light: 'flash' });
  });

  it('has a frame for each 0.08 mm of the 3 mm, and time for sixteen of 38', () => {
    expect(bench.number('frame-count')).toBe(38);
    expect(bench.number('in-time.frame-count')).toBe(16);
  });
});

describe('the plan that is projected', () => {
  it('ends with a card on which nothing has to be changed', () => {
    const last = settingAt(stage, { step: stage.length, answered: true });
    const decided = decisionsAt(`?${new URLSearchParams(last as Record<string, string>).toString()}`);
    expect(bench.notices).toEqual([]);
    expect(decided).toEqual({ hasRoom: true, frames: 'stack', light: 'flash' });
  });
});

describe('the plans that the page links to', () => {
  it('are one for each subject but the reader’s own', () => {
    expect(links).toHaveLength(Object.keys(subjects).length - 1);
  });

  it.each(links)('hold, at %s', (search) => {
    const decided = decisionsAt(search.replace(/&?sheet=card/, ''));
    expect(bench.notices).toEqual([]);
    expect({
      hasRoom: decided.hasRoom,
      frames: areGood(decided),
      light: decided.light !== 'higher-iso' && !decided.isOverexposed,
    }).toEqual({
      hasRoom: true,
      frames: true,
      light: true,
    });
    expect(decided.lightStands).toBeUndefined();
  });

  it('say what they are lit by: sun, frost and stamp by daylight, the others by a flash', () => {
    const lit = links.map((search) => [
      /subject=([a-z-]+)/.exec(search)?.[1] ?? 'jumping-spider',
      decisionsAt(search.replace(/&?sheet=card/, '')).light,
    ]);
    expect(lit.filter(([, light]) => light === 'ambient').map(([subject]) => subject)).toEqual([
      'butterfly',
      'frost-crystal',
      'stamp',
    ]);
  });
});
