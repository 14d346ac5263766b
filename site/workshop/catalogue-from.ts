import { course } from '#site/course.ts';
import { printerFor } from '#site/controls/workbench/workbench.ts';
import { fileOfFormula, formulaCalled, type Lesson } from '#site/lesson/lesson.ts';
import { plainText } from '#site/search/entries.ts';
import { firstSteps } from '#site/stage/first-steps.ts';
import { stepAddress } from '#site/stage/step.ts';
import { fillCaption } from '#site/stage/steps.ts';
import { printAnswer } from '#site/state/answer.ts';
import type { Catalogue, ListedLesson, RoomQuestion } from './catalogue.ts';

/** What a lesson's text says of itself. */
export interface LessonText {
  readonly question: string;
  readonly summary: string;
  readonly minutes: number;
  readonly bring: readonly string[];
  readonly prose: string;
}

/** All that an evening needs of the lessons, from their folders and texts by slug: made while the site is built. */
export function catalogueFrom(
  texts: Readonly<Record<string, LessonText>>,
  lessonOf: (slug: string) => Lesson,
): Catalogue {
  const written = course.filter(({ slug }) => slug in texts);
  return Object.fromEntries(written.map(({ slug }) => [slug, listed(texts[slug]!, lessonOf(slug))]));
}

function listed(text: LessonText, lesson: Lesson): ListedLesson {
  const { slug, bench, stage, given } = lesson;
  const { question, summary, minutes, bring, prose } = text;
  const told = partOf(prose, 'instructor');
  const live = printerFor(bench.atStep({}), printAnswer);
  const said = (words: string) =>
    plainText(words.replace(/<Live q="([^"]+)" ?\/>/g, (_, id: string) => live(id) ?? ''));
  return {
    slug,
    place: course.findIndex((one) => one.slug === slug) + 1,
    question,
    summary,
    path: `lessons/${slug}/`,
    minutesOfStep: Math.max(1, Math.round(minutes / stage.length)),
    steps: stage.map((step, index) => ({
      id: step.id,
      question: step.question,
      options: step.options,
      holds: step.holds,
      caption: step.caption,
      answer: fillCaption(step.caption, printerFor(bench.atStep(step.set ?? {}), printAnswer)),
      asked: stepAddress(stage, { step: index + 1, answered: false }),
      answered: stepAddress(stage, { step: index + 1, answered: true }),
      withheld: step.withheld ?? [],
    })),
    ...(isAsFirst(lesson) ? {} : { first: firstSteps[slug] ?? [] }),
    ...(given && { given }),
    formulas: mainFormulas(prose, lesson),
    bring,
    caution: plainText(partOf(prose, 'safety')),
    opening: said(told.split('<StageSteps />')[0]!.replace(/\s*The\s+projected\s+view\s+plays\s.*$/s, '')),
    roomAsks: roomQuestions(told, said),
  };
}

/** Whether its steps stand as they stood when plans counted places. */
function isAsFirst({ slug, stage }: Lesson): boolean {
  return firstSteps[slug]?.join(' ') === stage.map(({ id }) => id).join(' ');
}

/** The first formulas that a lesson explains, as many as a sheet for the hands has room for. */
function mainFormulas(prose: string, lesson: Lesson): readonly string[] {
  const named = [...partOf(prose, 'formula').matchAll(/<Formula of="([^"]+)"/g)].map(([, name]) => name!);
  const files = named.flatMap((name) => fileOfFormula(formulaCalled(name, lesson)) ?? []);
  return [...new Set(files)].slice(0, 3);
}

function partOf(prose: string, part: string): string {
  return new RegExp(`<Part is="${part}">(.*?)</Part>`, 's').exec(prose)?.[1]?.trim() ?? '';
}

/** The questions of a part for the instructor, each in bold with its answer behind it. What is computed where it stands is read in the lesson. */
function roomQuestions(told: string, said: (words: string) => string): readonly RoomQuestion[] {
  return told.split(/\n\s*\n/).flatMap((paragraph) => {
    const [, asks, says] = /^\*\*“(.+?)”\*\*\s+(.+)$/s.exec(paragraph.trim()) ?? [];
    return asks === undefined || /[{}]/.test(says!) ? [] : [{ asks: said(asks), says: said(says!) }];
  });
}
