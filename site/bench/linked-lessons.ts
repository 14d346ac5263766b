import { quantitiesExplained } from '#core/quantity/terms-of-quantities.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { AnyBench } from '#site/controls/workbench/workbench.ts';
import { groups, type AnsweredName } from './answers.ts';
import { nameInLesson, type LinkedLesson, type Lessons } from './lesson-link.ts';

/** What the page of the bench knows of the lessons; found while the site is built, for it takes their own benches. */

const names = Object.values(groups).flat() as readonly AnsweredName[];

/** Which lesson teaches each answer of the bench. */
export const taughtIn: Lessons['taughtIn'] = Object.fromEntries(
  names.map((name) => [name, quantitiesExplained[name].taughtIn]),
);

/** A lesson as answers lead to it. */
export function linkedLesson(bench: AnyBench, { href, question }: Pick<LinkedLesson, 'href' | 'question'>) {
  const inputs = Object.keys(bench.starts) as QuantityName[];
  const known = bench.at({}) as Readonly<Record<string, unknown>>;
  const needs = names.flatMap((name) => {
    const there = nameInLesson(name);
    return there in known
      ? [[name, inputs.filter((input) => input === there || bench.leansOn(there, input))] as const]
      : [];
  });
  const takes = inputs.map((name) => {
    const { least, most } = bench.range(name);
    return [name, [least, most] as const] as const;
  });
  return { href, question, takes: Object.fromEntries(takes), needs: Object.fromEntries(needs) } satisfies LinkedLesson;
}
