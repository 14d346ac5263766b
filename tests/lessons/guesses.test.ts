import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { AnyBench } from '#site/controls/workbench/workbench.ts';
import { everyLessonFile } from '#tests/support/lessons.ts';
import { root } from '#tests/support/run.ts';

const lessons = (await everyLessonFile('bench.svelte.ts')).map(({ slug, exports }) => ({
  slug,
  bench: exports['bench'] as AnyBench,
  prose: readFileSync(join(root, 'lessons', slug, 'lesson.mdx'), 'utf8'),
}));

describe.each(lessons)('the prose of $slug', ({ bench, prose }) => {
  const guesses = [...prose.matchAll(/<Predict\n.*?\n\/>/gs)].map(([text]) => ({
    question: /question="(.*)"/.exec(text)?.[1] ?? '',
    shows: /shows="(.*)"/.exec(text)?.[1],
  }));

  it('has guesses whose figure is not the one that everybody sees before guessing', () => {
    const start = JSON.stringify(bench.stateAfter(''));
    const seen = guesses.filter(({ shows }) => {
      if (shows === undefined || new URLSearchParams(shows).has('sheet')) return false;
      return JSON.stringify(bench.stateAfter(shows.slice(1))) === start;
    });
    expect(seen.map(({ question }) => question)).toEqual([]);
  });

  it('writes letters as a page prints them, an index after _', () => {
    const letters = [...prose.matchAll(/<Letter symbol="([^"]*)"/g)].map(([, symbol = '']) => symbol);
    expect(letters.filter((symbol) => !/^[^\\{}_\s]+(_[^\\{}_]+)?$/.test(symbol))).toEqual([]);
  });
});
