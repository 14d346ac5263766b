import { plainNumber } from '#core/quantity/plain-number.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { Chain } from '#site/chain/chain.ts';
import type { AnsweredName, BuiltChain } from './answers.ts';
import type { Conditions } from './conditions.ts';
import { givenBy, kindOf, type SetUp } from './set-up.ts';

/** The lessons a chain's answers can lead to: where each is, what it asks, and what its figure can be set to, in what range. */
export interface Lessons {
  readonly bySlug: Readonly<
    Record<
      string,
      {
        readonly href: string;
        readonly question: string;
        readonly takes: Readonly<Record<string, readonly [least: number, most: number]>>;
      }
    >
  >;
  /** The lesson that teaches a quantity. */
  readonly taughtIn: Readonly<Record<string, string>>;
}

/** Lessons whose own set-up is one that not every chain is: they are set only where the chain is so. */
const setUpOf: Readonly<Record<string, readonly SetUp[]>> = {
  extension: ['lens'],
  'focusing-close': ['lens'],
  'on-the-barrel': ['lens'],
  'working-distance': ['lens'],
  'effective-aperture': ['lens'],
  'depth-of-field': ['lens'],
  'best-aperture': ['lens'],
  'holding-still': ['lens'],
  stacking: ['lens'],
  reversed: ['reversed'],
  'close-up-lenses': ['close-up lens'],
};

/**
 * The lesson that teaches a quantity, its figure set to the chain's numbers where they mean the same there: those of a lens only where the chain is such a
 * lens, and all others, sensor, circle, light, always. What a lesson does not take keeps its usual value there.
 */
export function lessonLink(
  name: AnsweredName,
  chain: Chain,
  built: BuiltChain,
  conditions: Conditions,
  { bySlug, taughtIn }: Lessons,
): { readonly href: string; readonly question: string } | undefined {
  const slug = taughtIn[name];
  const lesson = slug === undefined ? undefined : bySlug[slug];
  if (slug === undefined || !lesson) return undefined;
  const kind = kindOf(built);
  const isSo = setUpOf[slug]?.includes(kind) ?? false;
  const { magnification } = built.answers;
  const given = {
    ...givenBy(chain, built, conditions, isSo ? kind : 'other'),
    ...(isSo && magnification !== undefined && { magnification }),
  };
  const set = (Object.entries(given) as [QuantityName, number][]).flatMap(([id, value]) => {
    const range = lesson.takes[id];
    return range && value >= range[0] && value <= range[1] ? [`${id}=${plainNumber(rounded(value))}`] : [];
  });
  return { href: set.length === 0 ? lesson.href : `${lesson.href}?${set.join('&')}`, question: lesson.question };
}

/** As many figures as a reader could type. */
const rounded = (value: number) => Number(value.toPrecision(6));
