import { globSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Chain } from '#site/chain/chain.ts';
import { readChain } from '#site/chain/chain-text.ts';
import type { AnyBench } from '#site/controls/workbench/workbench.ts';
import { valueOf } from '#site/state/answer.ts';
import { benchChains, chainsOfKind } from '#tests/support/bench-chains.ts';
import { builtChain, type AnsweredName, type BuiltChain } from './answers.ts';
import { usualConditions, type Conditions } from './conditions.ts';
import { lessonLink, nameInLesson, type Lessons } from './lesson-link.ts';
import { linkedLesson, taughtIn } from './linked-lessons.ts';

const benches = new Map<string, AnyBench>(
  await Promise.all(
    globSync('lessons/*/bench.svelte.ts').map(async (file) => {
      const { bench } = (await import(/* @vite-ignore */ `../../${file}`)) as { bench: AnyBench };
      return [file.split('/')[1]!, bench] as const;
    }),
  ),
);
const lessons: Lessons = {
  bySlug: Object.fromEntries(
    [...benches].map(([slug, bench]) => [slug, linkedLesson(bench, { href: `/lessons/${slug}/`, question: '' })]),
  ),
  taughtIn,
};

function built(chain: Chain, conditions = usualConditions): BuiltChain {
  const found = builtChain(chain, conditions);
  if (found.kind === 'impossible') throw new Error(found.why);
  return found;
}

interface Followed {
  readonly name: AnsweredName;
  readonly slug: string;
  readonly isSet: boolean;
  /** On the bench, and in the lesson that its link opens. */
  readonly here: number;
  readonly there: number | undefined;
}

/** Follows the link of every answer, and reads the same quantity there. */
function followed(chain: Chain, conditions: Conditions = usualConditions): readonly Followed[] {
  const found = built(chain, conditions);
  return (Object.entries(found.answers) as [AnsweredName, number][]).flatMap(([name, here]) => {
    const link = lessonLink(name, chain, found, conditions, lessons);
    if (!link) return [];
    const { pathname, searchParams } = new URL(link.href, 'https://site.invalid');
    const slug = pathname.split('/')[2]!;
    const answers = benches.get(slug)!.atStep(Object.fromEntries(searchParams));
    const answer = answers[nameInLesson(name)];
    return [{ name, slug, isSet: link.isSet, here, there: answer === undefined ? undefined : valueOf(answer) }];
  });
}

const isSame = (here: number, there: number | undefined) =>
  there !== undefined && (here === there || Math.abs(there - here) <= 0.01 * Math.abs(here) + 1e-3);

describe('links to lessons', () => {
  it('that claim the chain’s numbers open with the same answer', () => {
    const set = new Set<string>();
    fc.assert(
      fc.property(benchChains, ({ chain }) => {
        for (const { name, slug, isSet, here, there } of followed(chain)) {
          if (!isSet) continue;
          set.add(`${slug}: ${name}`);
          if (!isSame(here, there)) expect.fail(`${name} is ${here} here, and ${there} in ${slug}`);
        }
      }),
      { seed: 21, numRuns: 600 },
    );
    for (const one of ['extension: working-distance', 'reversed: magnification', 'close-up-lenses: working-distance']) {
      expect(set).toContain(one);
    }
  });

  it.each([
    'body-36,lens-50',
    'body-36,ring-12,lens-60',
    'body-36,lens-100',
    'body-36,ring-36,lens-90:m0.4',
    'body-36,ring-24,lens-50:far',
    'body-36,lens-18:far',
    'body-36,reversing-ring,lens-28:turned',
    'body-36,lens-100:far,close-up-4',
    'body-36,converter-2,lens-50',
    'body-36,bellows:e80,lens-50:f11',
  ])('from things of the crate, %s, open with the same answer', (text) => {
    const { chain, notices } = readChain(text);
    expect(notices).toEqual([]);
    for (const { name, slug, isSet, here, there } of followed(chain)) {
      if (isSet && !isSame(here, there)) expect.fail(`${name} is ${here} here, and ${there} in ${slug}`);
    }
  });

  it('lead from a lens on rings to the lesson on rings, and carry its numbers everywhere', () => {
    const all = followed(readChain('body-36,ring-24,lens-50').chain);
    const ofName = Object.fromEntries(all.map(({ name, slug, isSet }) => [name, `${slug}${isSet ? '' : ', own'}`]));
    expect(ofName).toMatchObject({
      magnification: 'extension',
      'working-distance': 'extension',
      'focus-distance': 'extension',
      'subject-distance': 'extension',
      'image-distance': 'extension',
      'field-width': 'extension',
      'effective-f-number': 'extension',
      'light-loss': 'extension',
      'angle-of-view': 'working-distance',
      'airy-diameter': 'diffraction',
      'keeper-share': 'placing-focus',
    });
    expect(all.filter(({ isSet }) => !isSet).map(({ name }) => name)).toEqual([]);
  });

  it('carry what is set beside the chain', () => {
    const conditions = { ...usualConditions, 'circle-of-confusion': 0.03, wavelength: 0.00045, overlap: 0.4 };
    const { chain } = readChain('body-36,ring-24,lens-50:far:f11');
    const all = followed(chain, conditions).filter(({ isSet }) => isSet);
    expect(all.length).toBeGreaterThan(20);
    for (const { name, here, there } of all) {
      if (!isSame(here, there)) expect.fail(`${name} is ${here} here, and ${there} there`);
    }
  });

  it('never give an opening for a mark', () => {
    // Shorter at its closest, so that f/8 is wider than f over 8 there.
    const all = followed(readChain('body-36,lens-60:f8').chain);
    const light = all.filter(({ name }) => ['effective-f-number', 'light-loss', 'airy-diameter'].includes(name));
    expect(light.map(({ isSet }) => isSet)).toEqual([false, false, false]);
  });

  it('claim nothing but of the camera for chains that no lesson is about', () => {
    for (const { chain } of fc.sample(chainsOfKind('coupled'), { seed: 22, numRuns: 20 })) {
      const slugs = new Set(followed(chain).flatMap(({ slug, isSet }) => (isSet ? [slug] : [])));
      expect([...slugs].filter((slug) => !['life-size', 'diffraction'].includes(slug))).toEqual([]);
    }
  });
});
