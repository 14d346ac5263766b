import { plainNumber } from '#core/quantity/plain-number.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { Chain } from '#site/chain/chain.ts';
import type { AnsweredName, BuiltChain } from './answers.ts';
import type { Conditions } from './conditions.ts';
import { givenBy, kindOf, type SetUp } from './set-up.ts';

/** A lesson that a chain's answers can lead to. */
export interface LinkedLesson {
  readonly href: string;
  readonly question: string;
  /** What its figure can be set to, in what range. */
  readonly takes: Readonly<Record<string, readonly [least: number, most: number]>>;
  /** Which of those each of its answers follows from. */
  readonly needs: Readonly<Partial<Record<AnsweredName, readonly string[]>>>;
}

/** The lessons a chain's answers can lead to, and the one that teaches each quantity. */
export interface Lessons {
  readonly bySlug: Readonly<Record<string, LinkedLesson>>;
  readonly taughtIn: Readonly<Record<string, string>>;
}

/** Where an answer leads. */
export interface LessonLink {
  readonly href: string;
  readonly question: string;
  /** The lesson is set so that it gives this answer as the chain does; else it opens with numbers of its own. */
  readonly isSet: boolean;
}

/** The lesson whose set-up a chain is; it gives what is asked of size, distance and light in one figure. */
const lessonOf: Readonly<Partial<Record<SetUp, string>>> = {
  lens: 'extension',
  reversed: 'reversed',
  'close-up lens': 'close-up-lenses',
};

/** Lessons that can stand in for the one that teaches a quantity, where that does not take what is known of a chain. */
const standIns = ['focusing-close', 'working-distance', 'effective-aperture', 'depth-of-field', 'extension'];

/** What a lesson calls an answer of the bench, where the name alone is something else there. */
const calledThere: Readonly<Partial<Record<AnsweredName, QuantityName>>> = { 'exposure-time': 'slowest.exposure-time' };

/**
 * Lessons name these alike and mean another thing: the angle seen far away, the opening of an objective, the best of other marks than the lens has, the lens
 * without its close-up lens.
 */
const meansOther: Readonly<Partial<Record<string, readonly AnsweredName[]>>> = {
  'on-the-barrel': ['angle-of-view'],
  'beyond-life-size': ['numerical-aperture'],
  'close-up-lenses': ['focal-length', 'principal-separation'],
  'best-aperture': ['best-f-number'],
};

/** What a lesson asks for in a way of getting close that it does not open with. */
const asksOtherwise: Readonly<Partial<Record<string, readonly string[]>>> = {
  'effective-aperture': ['converter-factor', 'focus-magnification'],
};

/** What a lesson calls an answer of the bench. */
export const nameInLesson = (name: AnsweredName): QuantityName => calledThere[name] ?? name;

/** Every lesson that an answer may lead to, in the order in which they are tried. */
export function lessonsFor(
  name: AnsweredName,
  taughtIn: Lessons['taughtIn'],
  kind: SetUp,
  hasRings: boolean,
): readonly string[] {
  const taught = taughtIn[name] === undefined ? [] : [taughtIn[name]];
  const ofKind = lessonOf[kind];
  const isOfFigure = ofKind !== undefined && (kind !== 'lens' || hasRings) && figured.has(name);
  const after = kind === 'lens' ? standIns : ofKind === undefined ? [] : [ofKind];
  return [...new Set([...(isOfFigure ? [ofKind] : []), ...taught, ...after])];
}

/** Size, distance and light: what the figure of a lesson on a set-up shows at once. */
const figured: ReadonlySet<AnsweredName> = new Set<AnsweredName>([
  'magnification',
  'field-width',
  'working-distance',
  'focus-distance',
  'subject-distance',
  'image-distance',
  'effective-f-number',
  'light-loss',
]);

/**
 * The lesson for an answer: the first that takes everything the answer follows from, and is set to it; where none does, the one that teaches the quantity,
 * with the lesson's own numbers, for some of the chain's among them would mean nothing.
 */
export function lessonLink(
  name: AnsweredName,
  chain: Chain,
  built: BuiltChain,
  conditions: Conditions,
  { bySlug, taughtIn }: Lessons,
): LessonLink | undefined {
  const kind = kindOf(built);
  const given = givenToLessons(chain, built, conditions, kind);
  for (const slug of lessonsFor(name, taughtIn, kind, (given['lens'].extension ?? 0) !== 0)) {
    const lesson = bySlug[slug];
    const needs = meansOther[slug]?.includes(name) ? undefined : lesson?.needs[name];
    if (!lesson || !needs) continue;
    const told = given[slugsOfOneKind.get(slug) ?? 'lens'];
    const set = settings(lesson, told, hidden(slug, told));
    if (needs.every((input) => set.has(input) || asksOtherwise[slug]?.includes(input))) {
      const query = [...set].map(([id, value]) => `${id}=${value}`).join('&');
      return { href: `${lesson.href}?${query}`, question: lesson.question, isSet: true };
    }
  }
  const lesson = bySlug[taughtIn[name] ?? ''];
  return lesson && { href: lesson.href, question: lesson.question, isSet: false };
}

const slugsOfOneKind = new Map<string, 'reversed' | 'close-up lens'>([
  ['reversed', 'reversed'],
  ['close-up-lenses', 'close-up lens'],
]);

type Given = Readonly<Partial<Record<QuantityName, number>>>;

/** What lessons on each set-up may be told of the chain: its lens only where the chain is that set-up. */
function givenToLessons(
  chain: Chain,
  built: BuiltChain,
  conditions: Conditions,
  kind: SetUp,
): Readonly<Record<'lens' | 'reversed' | 'close-up lens', Given>> {
  const { solved } = built.positions;
  const { magnification, 'f-number': marked, 'exposure-time': time } = built.answers;
  const around: Given = {
    ...givenBy(chain, built, conditions, 'other'),
    ...(magnification !== undefined && { magnification }),
    ...(time !== undefined && { 'exposure-time': time }),
  };
  // A lens that is shorter close up opens wider than its mark says: no lesson knows such a mark.
  const { 'f-number': byOpening, ...unmarked } = { ...around, ...givenBy(chain, built, conditions, kind) };
  const isAsMarked = marked !== undefined && Math.abs(byOpening! / marked - 1) < 1e-6;
  const own: Given = isAsMarked ? { ...unmarked, 'f-number': marked } : unmarked;
  // Lessons know of real pictures only, and call what is smaller none.
  const isNone = ('upright' in solved && solved.upright) || (magnification ?? 1) < smallest;
  const whenSo = (setUp: SetUp): Given => (kind === setUp && !isNone ? own : around);
  return { lens: whenSo('lens'), reversed: whenSo('reversed'), 'close-up lens': whenSo('close-up lens') };
}

const smallest = 1e-5;

/** What one lesson may not be told of such a chain, for it would take it otherwise. */
function hidden(slug: string, given: Given): readonly QuantityName[] {
  // A lesson without rings.
  if (slug === 'focusing-close' && given.extension !== 0) return ['focus-magnification', 'focus-travel'];
  // Of a racked out lens it says what draws back with the glass; the chain does not know.
  if (slug === 'reversed' && given['focus-travel'] !== 0) return ['rear-protrusion'];
  return [];
}

/** What a lesson takes of what is given, as an address carries it. */
function settings({ takes }: LinkedLesson, given: Given, not: readonly string[]): ReadonlyMap<string, string> {
  const all = Object.entries(given) as [string, number][];
  return new Map(
    all.flatMap(([id, value]) => {
      const range = takes[id];
      // As many figures as a reader could type.
      const text = plainNumber(Number(value.toPrecision(6)));
      return range && !not.includes(id) && value >= range[0] && value <= range[1] ? [[id, text] as const] : [];
    }),
  );
}
