import { render } from '@testing-library/svelte';
import { tick } from 'svelte';
import { afterEach, expect, it } from 'vitest';
import { drawnLessons } from './settings.ts';

const lessons = await drawnLessons();

afterEach(() => {
  for (const { bench } of lessons) bench.read('');
});

it.each(lessons)(
  'the sheets of $slug print no ratio of a scale: on a screen it would not be true',
  async ({ Figure, props }) => {
    const { container } = render(Figure, { props });
    await tick();
    const cells = [...container.querySelectorAll('.title-block text, .quiet')].map(({ textContent }) => textContent);
    expect(cells.filter((cell) => /(?:scale|,)[^:]*\d:\d/.test(cell))).toEqual([]);
  },
);
