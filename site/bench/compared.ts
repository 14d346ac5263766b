import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { groups, type AnsweredName, type Answers } from './answers.ts';
import { answerText } from './words.ts';

/** One quantity of two chains; undefined where a chain has none. */
export interface Compared {
  readonly name: AnsweredName;
  readonly first: number | undefined;
  readonly second: number | undefined;
  readonly isAlike: boolean;
}

/** All quantities that either of two chains has: those that differ first, the farthest apart before the others, then those that print alike. */
export function compared(first: Answers, second: Answers): readonly Compared[] {
  const names = Object.values(groups).flat() as readonly AnsweredName[];
  const all = names
    .filter((name) => first[name] !== undefined || second[name] !== undefined)
    .map((name): Compared => {
      const [one, other] = [first[name], second[name]];
      const isAlike = one !== undefined && other !== undefined && printed(name, one) === printed(name, other);
      return { name, first: one, second: other, isAlike };
    });
  const apart = all.filter(({ isAlike }) => !isAlike).sort((one, other) => distance(other) - distance(one));
  return [...apart, ...all.filter(({ isAlike }) => isAlike)];
}

const printed = (name: QuantityName, value: number) => answerText(name, value);

/** How far apart, as a ratio whose logarithm is taken; without one of the two, or with another sign, farther than anything. */
function distance({ first, second }: Compared): number {
  if (first === undefined || second === undefined) return Infinity;
  const ratio = second / first;
  return ratio > 0 && Number.isFinite(ratio) ? Math.abs(Math.log(ratio)) : Infinity;
}
