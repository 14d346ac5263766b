import { globSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isQuantityId, type QuantityName } from '#core/quantity/vocabulary.ts';
import { printAnswer, valueOf, type Answer } from '#site/state/answer.ts';
import type { AnyBench } from '#site/controls/workbench/workbench.ts';

const files = globSync('lessons/*/bench.svelte.ts');
const benches = await Promise.all(
  files.map(async (file) => {
    const { bench } = (await import(/* @vite-ignore */ `../../${file}`)) as { bench: AnyBench };
    return [file.split('/')[1]!, bench] as const;
  }),
);

/** Values over the whole range of an input: the ends, the start, and by ratio where the range allows it. */
function valuesOf(bench: AnyBench, name: QuantityName) {
  const { least, most } = bench.range(name);
  const between = fc.double({ min: 0, max: 1, noNaN: true });
  const spread =
    least > 0
      ? between.map((part) => least * (most / least) ** part)
      : between.map((part) => least + part * (most - least));
  return fc.oneof(fc.constantFrom(least, most, bench.starts[name]), spread);
}

const inputsOf = (bench: AnyBench) => Object.keys(bench.starts) as QuantityName[];

it('finds the benches of the lessons', () => {
  expect(benches.length).toBeGreaterThan(0);
});

describe.each(benches)('the bench of %s', (_, bench) => {
  it('speaks of quantities of the vocabulary only', () => {
    expect(Object.keys(bench.at({})).filter((id) => !isQuantityId(id.slice(id.lastIndexOf('.') + 1)))).toEqual([]);
  });

  it('starts inside the range of every input', () => {
    for (const name of inputsOf(bench)) {
      const { least, most } = bench.range(name);
      expect(bench.starts[name]).toBeGreaterThanOrEqual(least);
      expect(bench.starts[name]).toBeLessThanOrEqual(most);
    }
  });

  it('answers everything, everywhere: with a number or with words', () => {
    const record = fc.record(Object.fromEntries(inputsOf(bench).map((name) => [name, valuesOf(bench, name)])));
    fc.assert(
      fc.property(record, (given) => {
        const answers: Readonly<Record<string, Answer>> = bench.at(given);
        for (const [name, answer] of Object.entries(answers)) {
          const value = valueOf(answer);
          if (value !== undefined) expect(value).not.toBeNaN();
          expect(printAnswer(name as QuantityName, answer)).not.toMatch(/^$|NaN|undefined|null/);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('has only choices whose options lie inside the ranges they fill', () => {
    for (const [choice, { options }] of Object.entries(bench.choices)) {
      expect(Object.keys(options).length, choice).toBeGreaterThan(0);
      for (const { fills } of Object.values(options)) {
        const filled = typeof fills === 'function' ? fills(bench.starts) : fills;
        for (const [name, value] of Object.entries<number | undefined>(filled)) {
          const { least, most } = bench.range(name as QuantityName);
          expect(value, `${choice} fills ${name}`).toBeGreaterThanOrEqual(least);
          expect(value, `${choice} fills ${name}`).toBeLessThanOrEqual(most);
        }
      }
    }
  });
});
