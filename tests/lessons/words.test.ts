import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { terms } from '#core/quantity/terms.ts';
import { course } from '#site/course.ts';
import { introducedBy, termsOfLesson, unknownWords, type LessonWords } from '#site/terms/introduced.ts';
import { lessonSlugs } from '#tests/support/lessons.ts';
import { root } from '#tests/support/run.ts';

function wordsOf(slug: string): LessonWords {
  const [, frontmatter = '', prose = ''] =
    /^---\n(.*?)\n---\n(.*)$/s.exec(readFileSync(join(root, 'lessons', slug, 'lesson.mdx'), 'utf8')) ?? [];
  const leansOn = /^leansOn: \[(.*)\]$/m.exec(frontmatter)?.[1]?.split(/,\s*/) ?? [];
  return { slug, leansOn, terms: termsOfLesson(prose) };
}

const order = course.map(({ slug }) => slug as string);
const written = new Map(lessonSlugs().map((slug) => [slug, wordsOf(slug)]));

describe.each([...written.values()])('the words of lessons/$slug', (lesson) => {
  it('leans on earlier lessons of the course alone', () => {
    const earlier = order.slice(0, order.indexOf(lesson.slug));
    expect(lesson.leansOn.filter((slug) => !earlier.includes(slug))).toEqual([]);
  });

  it('are each explained, in bold or italics and before their first use, here or in a lesson that it leans on', () => {
    const missing = unknownWords(lesson, written).map(({ id, part, explainedLater }) =>
      explainedLater
        ? `“${id}” is used in the part “${part}” before the sentence that explains it: move that sentence up`
        : `“${id}” is used in the part “${part}” and explained nowhere: say there what it means, the word in **bold** or _italics_`,
    );
    expect(missing).toEqual([]);
  });

  it('hold every word of the glossary that the glossary says is taught here', () => {
    const introduced = introducedBy(lesson);
    const used = new Set(lesson.terms.map(({ term }) => term.id as string));
    const promised = terms.filter(
      ({ taughtIn, everyday, id }) => taughtIn === lesson.slug && !everyday && used.has(id),
    );
    expect(promised.map(({ id }) => id as string).filter((id) => !introduced.has(id))).toEqual([]);
  });
});

describe('the glossary', () => {
  it('names lessons of the course as those that teach a word', () => {
    expect(terms.filter(({ taughtIn }) => !order.includes(taughtIn)).map(({ id }) => id)).toEqual([]);
  });
});

describe('a word in prose', () => {
  const one = (prose: string, leansOn: readonly string[] = [], others: readonly LessonWords[] = []) =>
    unknownWords(
      { slug: 'new', leansOn, terms: termsOfLesson(prose) },
      new Map(others.map((other) => [other.slug, other])),
    );
  const idsIn = (prose: string) => termsOfLesson(prose).map(({ term }) => term.id);

  it('is unknown until it stands in bold or in italics', () => {
    expect(one('<Part is="idea">\n\nThe focal length counts.\n\n</Part>')).toEqual([
      { id: 'focal-length', part: 'idea', explainedLater: false },
    ]);
    expect(one('The **focal length** says how strongly. So the focal length counts.')).toEqual([]);
    expect(one('The _focal length_ says how strongly. So the focal length counts.')).toEqual([]);
    expect(one('The focal length counts. The **focal length** says …')).toMatchObject([{ explainedLater: true }]);
  });

  it('is not explained by a rule, a question or a run-in head in bold', () => {
    expect(one('**A longer focal length gives more.**')).toHaveLength(1);
    expect(one('**Focal length.** It counts. The focal length is f.')).toHaveLength(1);
  });

  it('may be explained by a lesson that is leaned on, however far down, if it is written', () => {
    const base: LessonWords = { slug: 'base', leansOn: [], terms: termsOfLesson('A **sensor** records light.') };
    const middle: LessonWords = { slug: 'middle', leansOn: ['base', 'unwritten'], terms: [] };
    expect(one('The sensor is small.', ['middle'], [base, middle])).toEqual([]);
    expect(one('The sensor is small.', ['unwritten'], [base, middle])).toHaveLength(1);
  });

  it('is found as the longest, at a sentence’s start, over a line’s end, in the plural and in predictions', () => {
    expect(idsIn('Effective f-numbers grow.')).toEqual(['effective-f-number']);
    expect(idsIn('The depth of\nfield')).toEqual(['depth-of-field']);
    expect(idsIn('<Predict question="How many pixels?" options={["none"]} answer="Two frames." />')).toEqual([
      'pixel',
      'frame',
    ]);
  });

  it('is left alone in headings, links, code and formulas, and within another word', () => {
    expect(idsIn('## Pixels\n\n[pixels](?a=1) `pixel` $pixel$\n\nA subpixel, a pixel-wide line')).toEqual([]);
  });

  it('needs no explaining where it is plain English, nor for an instructor', () => {
    expect(one('Turn the focus ring.')).toEqual([]);
    expect(one('<Part is="instructor">\n\nThe focal length.\n\n</Part>')).toEqual([]);
  });
});
