import { existsSync, globSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import fc from 'fast-check';
import type { Component } from 'svelte';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { AnyBench } from '#site/controls/workbench/workbench.ts';
import { root } from '#tests/support/run.ts';

export interface DrawnLesson {
  readonly slug: string;
  readonly bench: AnyBench;
  /** The lesson's figure with its readings and controls. */
  readonly Figure: Component<Record<string, unknown>>;
  /** What its page gives it, where the lesson has `figures/given.ts`. */
  readonly props: Record<string, unknown>;
}

/** Every lesson's bench and the figure that draws it, by folder. Throws where there is none: what holds for nothing always holds. */
export async function drawnLessons(): Promise<readonly DrawnLesson[]> {
  const folders = globSync('lessons/*/figures/Bench.svelte', { cwd: root }).map((file) => dirname(dirname(file)));
  if (folders.length === 0) throw new Error(`no lessons/*/figures/Bench.svelte below ${root}`);
  return Promise.all(
    folders.sort().map(async (folder) => {
      const load = <Exports>(file: string) => import(/* @vite-ignore */ `../../${folder}/${file}`) as Promise<Exports>;
      const { bench } = await load<Pick<DrawnLesson, 'bench'>>('bench.svelte.ts');
      const { default: Figure } = await load<{ default: DrawnLesson['Figure'] }>('figures/Bench.svelte');
      const isGiven = existsSync(join(root, folder, 'figures/given.ts'));
      const { given: props } = isGiven
        ? await load<{ given: DrawnLesson['props'] }>('figures/given.ts')
        : { given: {} };
      return { slug: basename(folder), bench, Figure, props };
    }),
  );
}

/** What an address may set on a bench, by name; '' where the bench stands at its start. */
export type Setting = string;

const addressOf = (set: Readonly<Record<string, string | number | undefined>>): Setting =>
  new URLSearchParams(
    Object.entries(set).flatMap(([name, value]) => (value === undefined ? [] : [[name, `${value}`]])),
  ).toString();

export const inputsOf = (bench: AnyBench) => Object.keys(bench.starts) as QuantityName[];

/** Each input at each of its ends by itself, each choice with each of its options, and all inputs at their ends together. */
export function extremesOf(bench: AnyBench): readonly Setting[] {
  const names = inputsOf(bench);
  const ends = names.flatMap((name) => {
    const { least, most } = bench.range(name);
    return [least, most].map((end) => addressOf({ [name]: end }));
  });
  const options = Object.entries(bench.choices).flatMap(([choice, plan]) =>
    Object.keys(plan.options).map((slug) => addressOf({ [choice]: slug })),
  );
  const corners = (['least', 'most'] as const).map((end) =>
    addressOf(Object.fromEntries(names.map((name) => [name, bench.range(name)[end]]))),
  );
  return ['', ...ends, ...options, ...corners];
}

/** Any state that an address can reach: inputs by ratio where their range allows it, often at an end, and choices. */
export function anySettingOf(bench: AnyBench): fc.Arbitrary<Setting> {
  return settingOf(bench, fc.oneof(fc.constantFrom(0, 1), fc.double({ min: 0, max: 1, noNaN: true })));
}

/** Any state that an address can reach, no input likelier to stand near an end than elsewhere. */
export function innerSettingOf(bench: AnyBench): fc.Arbitrary<Setting> {
  const steps = 10000;
  return settingOf(
    bench,
    fc.noBias(fc.integer({ min: 0, max: steps })).map((step) => step / steps),
  );
}

/** Inputs where the shares of their ranges fall, and choices. */
function settingOf(bench: AnyBench, part: fc.Arbitrary<number>): fc.Arbitrary<Setting> {
  const inputs = inputsOf(bench).map((name) => {
    const { least, most } = bench.range(name);
    const value = (share: number) => (least > 0 ? least * (most / least) ** share : least + share * (most - least));
    return [name, part.map((share) => Math.min(most, Math.max(least, Number(value(share).toPrecision(6)))))] as const;
  });
  const choices = Object.entries(bench.choices).map(
    ([choice, { options }]) =>
      [choice, fc.option(fc.constantFrom(...Object.keys(options)), { nil: undefined })] as const,
  );
  // Choices fill inputs, so each comes alone or not at all; what an address says of an input goes before what a choice fills.
  return fc
    .record(Object.fromEntries<fc.Arbitrary<string | number | undefined>>([...inputs, ...choices]))
    .map(addressOf);
}
