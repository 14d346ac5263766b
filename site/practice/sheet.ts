import { isSeed } from '#core/practice/seed.ts';
import { drawVersions, type SheetKind, type SheetProblem } from '#core/practice/versions.ts';
import { editions, newest } from './editions.ts';

/** One kind of problem: a lesson's slug and a family of it. */
export interface KindName {
  readonly lesson: string;
  readonly family: string;
}

/** The versions of one sheet, for neighbours in a room. */
export const versions = ['A', 'B', 'C', 'D'] as const;
export type Version = (typeof versions)[number];

/** So many problems a sheet has at most. */
export const mostProblems = 24;

/** Everything that says which problems a sheet asks. */
export interface SheetPlan {
  /** The letter of the edition that its kinds are counted by. */
  readonly edition: string;
  /** At least one, in the order of the edition. */
  readonly kinds: readonly KindName[];
  /** 1 to {@link mostProblems}. */
  readonly count: number;
  readonly version: Version;
  /** 1 to 999999. */
  readonly seed: number;
}

export type SheetReading =
  | { readonly kind: 'value'; readonly plan: SheetPlan }
  /** *message* says what was found and what a sheet's address looks like. */
  | { readonly kind: 'unreadable'; readonly message: string };

/** Every kind of problem, in the newest edition's order. */
export const everyKind: readonly KindName[] = kindsIn(newest);

function kindsIn(edition: string): readonly KindName[] {
  return editions[edition]!.flatMap(([lesson, families]) => families.map((family) => ({ lesson, family })));
}

const letters = 'abcdefghijklmnopqrstuvwxyz';
const isKind = (one: KindName) => (other: KindName) => one.lesson === other.lesson && one.family === other.family;

/**
 * `a-4.9ac-12-B-4821`: how an address, a QR code or somebody who reads it out names a sheet. Edition, kinds, how many problems, version, seed; the kinds as
 * the lesson's place in the edition, with letters for some of its kinds, or `all`.
 */
export function sheetText({ edition, kinds, count, version, seed }: SheetPlan): string {
  const lessons = editions[edition]!;
  const named = lessons.flatMap(([lesson, families], place) => {
    const has = families.map((family) => kinds.some(isKind({ lesson, family })));
    if (!has.includes(true)) return [];
    return [`${place + 1}${has.includes(false) ? [...letters].filter((_, at) => has[at]).join('') : ''}`];
  });
  const isAll = kinds.length === kindsIn(edition).length;
  return [edition, isAll ? 'all' : named.join('.'), count, version, seed].join('-');
}

/** The sheet that *text* names. No text makes this throw. */
export function readSheetText(text: string): SheetReading {
  const found = text.length > 40 ? `${text.slice(0, 40)}…` : text;
  const refuse = (why: string): SheetReading => ({
    kind: 'unreadable',
    message: `The link asks for a sheet “${found}” that is not here: ${why} Make another below, or check the link.`,
  });
  const parts = text.split('-');
  const [edition = '', named = '', count = '', version = '', seed = ''] = parts;
  if (parts.length !== 5) return refuse('a sheet has five parts with hyphens between them, such as a-4.9ac-12-B-4821.');
  if (!Object.hasOwn(editions, edition))
    return refuse(
      `it is of edition “${edition.slice(0, 8)}”, and this workbook knows ${Object.keys(editions).join(', ')}.`,
    );
  const kinds = named === 'all' ? kindsIn(edition) : readKinds(named, edition);
  if (typeof kinds === 'string') return refuse(kinds);
  if (!/^\d{1,2}$/.test(count) || Number(count) < 1 || Number(count) > mostProblems)
    return refuse(`it has 1 to ${mostProblems} problems.`);
  if (!versions.includes(version as Version)) return refuse('its version is A, B, C or D.');
  if (!/^\d{1,6}$/.test(seed) || !isSeed(Number(seed))) return refuse('its number is whole, from 1 to 999999.');
  return {
    kind: 'value',
    plan: { edition, kinds, count: Number(count), version: version as Version, seed: Number(seed) },
  };
}

/** The kinds that `4.9ac` names, in the edition's order; in words what is wrong with it. */
function readKinds(named: string, edition: string): readonly KindName[] | string {
  const lessons = editions[edition]!;
  const asked = new Map<number, readonly string[]>();
  for (const one of named.split('.')) {
    const [, place = '', some = ''] = /^(\d{1,2})([a-z]*)$/.exec(one) ?? [];
    const lesson = lessons[Number(place) - 1];
    if (place === '' || !lesson)
      return `its lessons are numbers from 1 to ${lessons.length}, with points between them.`;
    const families = some === '' ? lesson[1] : [...some].map((letter) => lesson[1][letters.indexOf(letter)] ?? '');
    if (families.includes('')) return `lesson ${place} has ${lesson[1].length} kinds, from a on.`;
    asked.set(Number(place) - 1, [...(asked.get(Number(place) - 1) ?? []), ...families]);
  }
  return kindsIn(edition).filter(({ lesson, family }) =>
    asked.get(lessons.findIndex(([slug]) => slug === lesson))?.includes(family),
  );
}

/** A plan for kinds of the newest edition, for a page that makes sheets. */
export function newSheet(kinds: readonly KindName[], seed: number, count = 8, version: Version = 'A'): SheetPlan {
  return { edition: newest, kinds: everyKind.filter((one) => kinds.some(isKind(one))), count, version, seed };
}

/**
 * The problems of a sheet, from the families of its lessons; `problemsOn` in `families.ts` fetches those first.
 *
 * The same plan gives the same problems for ever. Fewer than asked come back only where the kinds have no more different questions.
 *
 * @throws Error where a kind of the plan is not among *families*
 */
export function drawnFrom(plan: SheetPlan, families: readonly SheetKind[]): readonly SheetProblem[] {
  const kinds = plan.kinds.map((kind) => {
    const found = families.find(({ lesson, family }) => lesson === kind.lesson && family.id === kind.family);
    if (!found)
      throw new Error(`lessons/${kind.lesson}/problems.ts lacks the family ${kind.family} of edition ${plan.edition}`);
    return found;
  });
  const drawn = drawVersions(kinds, { ...plan, versions: versions.indexOf(plan.version) + 1 });
  return drawn.at(-1)!;
}
