import { createProcessor } from '@mdx-js/mdx';
import type { Root } from 'mdast';
import remarkMath from 'remark-math';
import { partsInOrder } from '#site/build/parts-in-order.ts';
import { termsInProse, type Occurrence } from './in-prose.ts';

/** A lesson as far as words go: what it leans on, and its terms in reading order. */
export interface LessonWords {
  readonly slug: string;
  readonly leansOn: readonly string[];
  readonly terms: readonly Occurrence[];
}

const processor = createProcessor({ remarkPlugins: [remarkMath] });

/** The terms in a lesson's prose, without its frontmatter. */
export function termsOfLesson(prose: string): readonly Occurrence[] {
  const tree = processor.parse(prose) as Root;
  // Read as it stands on the page.
  partsInOrder()(tree);
  return termsInProse(tree);
}

/** What *lesson* introduces itself: ids of terms. */
export function introducedBy({ terms }: Pick<LessonWords, 'terms'>): ReadonlySet<string> {
  return new Set(terms.filter(({ introduces }) => introduces).map(({ term }) => term.id));
}

/** A word that a reader meets and does not know, and where in the lesson. */
export interface UnknownWord {
  readonly id: string;
  readonly part: string;
  /** The lesson does say what it means, but only after this place. */
  readonly explainedLater: boolean;
}

/**
 * The terms that a lesson uses before it, or a lesson that it leans on, has said what they mean. Everyday words need no saying, and
 * an instructor knows the words of the course.
 *
 * @param written every written lesson by slug: those that are not written have explained nothing
 */
export function unknownWords(lesson: LessonWords, written: ReadonlyMap<string, LessonWords>): readonly UnknownWord[] {
  const known = new Set<string>();
  for (const slug of leanedOn(lesson, written)) {
    for (const id of introducedBy(written.get(slug)!)) known.add(id);
  }
  const own = introducedBy(lesson);
  const unknown = new Map<string, UnknownWord>();
  for (const { term, part, introduces } of lesson.terms) {
    const { id, everyday } = term;
    if (introduces) known.add(id);
    else if (everyday || part === 'instructor') continue;
    else if (!known.has(id) && !unknown.has(id)) unknown.set(id, { id, part, explainedLater: own.has(id) });
  }
  return [...unknown.values()];
}

/** The written lessons that *lesson* leans on, and those that these lean on. */
function leanedOn(lesson: LessonWords, written: ReadonlyMap<string, LessonWords>): ReadonlySet<string> {
  const found = new Set<string>();
  const open = [...lesson.leansOn];
  for (let slug = open.pop(); slug !== undefined; slug = open.pop()) {
    const base = written.get(slug);
    if (!base || found.has(slug)) continue;
    found.add(slug);
    open.push(...base.leansOn);
  }
  return found;
}
