import type { AllProgress } from './kept.ts';
import { wasSlippedOn } from './kept.ts';

/** A lesson with its kinds of problem, by id. */
export interface LessonKinds {
  readonly slug: string;
  readonly kinds: readonly { readonly id: string }[];
}

/**
 * The kinds of problem that a review asks, `lesson/family`, in the order in which it meets them first: those that were slipped on in their lesson, those not
 * tried, those that were right there. Lessons take turns within each.
 */
export function kindsInTurn(lessons: readonly LessonKinds[], progress: AllProgress): readonly string[] {
  const all = turnAbout(lessons.map(({ slug, kinds }) => kinds.map(({ id }) => ({ slug, id }))));
  const rank = ({ slug, id }: (typeof all)[number]) => {
    const own = progress[slug];
    const score = own && Object.hasOwn(own, id) ? own[id] : undefined;
    if (!score) return 1;
    return wasSlippedOn(score) ? 0 : 2;
  };
  return [...all].sort((one, other) => rank(one) - rank(other)).map(({ slug, id }) => `${slug}/${id}`);
}

/** The first of each list, then the second of each, and so on. */
function turnAbout<T>(lists: readonly (readonly T[])[]): readonly T[] {
  const longest = Math.max(0, ...lists.map(({ length }) => length));
  return Array.from({ length: longest }, (_, place) => lists.flatMap((list) => list.slice(place, place + 1))).flat();
}
