// Fetched at the first movement: here at once, for the tests may end before.
import '#site/controls/formula/in-step.ts';
import { fireEvent, render } from '@testing-library/svelte';
import { tick } from 'svelte';
import { afterEach, describe, expect, it } from 'vitest';
import { drawnLessons } from './settings.ts';

describe.each(await drawnLessons())('the controls of $slug', ({ bench, Figure, props }) => {
  afterEach(() => void bench.read(''));

  /** The figure as it stands in a page, its fields with the slider of each, and what its readings say. */
  function drawn() {
    const { container } = render(Figure, { props });
    const inputs = [...container.querySelectorAll('.controls .input')].map((input) => ({
      input,
      field: input.querySelector<HTMLInputElement>('input.field')!,
      slider: input.querySelector<HTMLInputElement>('input[type=range]')!,
    }));
    const back = [...container.querySelectorAll('button')].find(
      ({ textContent }) => textContent === 'Reset all settings',
    )!;
    const readings = () =>
      [...container.querySelectorAll('output')].map(({ name, textContent }) => [name, textContent]);
    return { inputs, readings, back };
  }

  it('are two or three that the lesson is about; the rest is folded', () => {
    const { container } = render(Figure, { props });
    const all = [...container.querySelectorAll('.controls :is(.choice, .input)')];
    const first = all.filter((control) => !control.closest('details'));
    expect(first.length).toBeGreaterThan(1);
    expect(first.length).toBeLessThan(4);
  });

  it('refuse nonsense in every field with a notice, and change nothing', async () => {
    const { inputs, readings } = drawn();
    await tick();
    const before = readings();
    expect(inputs.length).toBeGreaterThan(1);
    for (const [at, { input, field }] of inputs.entries()) {
      const value = field.value;
      // What is nonsense is the reader's of numbers to say, for which `read.test.ts` has all of it: every field refuses one kind, the first all four.
      const kinds = ['abc', '-1e9', '1e999', '12 parsec'];
      for (const nonsense of at === 0 ? kinds : [kinds[at % kinds.length]!]) {
        await fireEvent.input(field, { target: { value: nonsense } });
        await fireEvent.keyDown(field, { key: 'Enter' });
        expect(input.querySelector('.notice')?.textContent, `${field.name}: ${nonsense}`).toMatch(
          /The setting is unchanged|runs from/,
        );
        expect(field.getAttribute('aria-invalid')).toBe('true');
        expect(field.getAttribute('aria-describedby')).toBe(input.querySelector('.notice')!.id);
        expect(readings()).toEqual(before);
      }
      await fireEvent.keyDown(field, { key: 'Escape' });
      expect(input.querySelector('.notice')).toBeNull();
      expect(field.hasAttribute('aria-invalid')).toBe(false);
      expect(field.value).toBe(value);
    }
  });

  it('move a value at once when its slider leaves an end, and come back to the start', async () => {
    const { inputs, readings, back } = drawn();
    await tick();
    const before = readings();
    for (const { field, slider } of inputs) {
      const last = Number(slider.max);
      for (const [end, beside] of [
        [0, 1],
        [last, last - 1],
      ] as const) {
        await fireEvent.input(slider, { target: { value: `${end}` } });
        const there = field.value;
        expect(slider.getAttribute('aria-valuetext')).toBe(there);
        await fireEvent.input(slider, { target: { value: `${beside}` } });
        expect(field.value, `${field.name}, one step from ${there}`).not.toBe(there);
      }
      // What the reader sets for all lessons is no matter of this one's start.
      localStorage.clear();
      await fireEvent.click(back);
      expect(readings()).toEqual(before);
    }
  });
});
