import type { FamilyScore, Progress } from '#core/practice/score.ts';
import { isProgress, progressAfter, type PracticeEvent } from '#core/practice/score.ts';
import { isReview, type Review } from '#core/practice/review-session.ts';
import { progressOf } from '#site/state/progress.ts';
import { stored } from '#site/state/stored.ts';

/** What a reader has answered on one sheet, problem by problem; *first* is how the first answer was. */
export type SheetAnswers = readonly { readonly text: string; readonly first?: 'right' | 'slip' | undefined }[];

/** Answers by the text of their sheet, the one worked last at the end. */
export type AllAnswers = Readonly<Record<string, SheetAnswers>>;

/** The review, kept on the reader's own machine. */
export const keptReview = stored<Review>({
  key: 'review',
  words: 'review',
  renewed: 'What you answer now begins a new one.',
  fallback: { asked: 0, kinds: {} },
  isValid: isReview,
});

/** What was answered on sheets, by their text, the last one worked at the end. */
export const keptAnswers = stored<AllAnswers>({
  key: 'sheet-answers',
  words: 'answers to sheets',
  renewed: 'What you type now is kept.',
  fallback: {},
  isValid: isAnswers,
});

/** So many sheets' answers are kept. */
const mostSheets = 20;

function isAnswers(value: unknown): value is AllAnswers {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return false;
  return Object.values(value).every(
    (answers) =>
      Array.isArray(answers) &&
      answers.every(
        (one: unknown) =>
          typeof one === 'object' &&
          one !== null &&
          typeof (one as { text?: unknown }).text === 'string' &&
          ['right', 'slip', undefined].includes((one as { first?: never }).first),
      ),
  );
}

/** *kept* with the answers to one sheet, and without the oldest where there are too many. */
export function withAnswers(kept: AllAnswers, sheet: string, answers: SheetAnswers): AllAnswers {
  const { [sheet]: _, ...others } = kept;
  return { ...Object.fromEntries(Object.entries(others).slice(1 - mostSheets)), [sheet]: answers };
}

/** How a reader stands in the problems of all lessons, by slug; lessons not begun are missing. */
export type AllProgress = Readonly<Record<string, Progress>>;

/** What the lessons have kept, and what was found in the place of what cannot be read. */
export function readProgress(slugs: readonly string[]): { progress: AllProgress; notice: string } {
  const found = slugs.map((slug) => [slug, progressOf(slug).read()] as const);
  const begun = found.filter(([, { value }]) => Object.keys(value).length > 0);
  const unread = found.filter(([, { notice }]) => notice !== undefined).length;
  return {
    progress: Object.fromEntries(begun.map(([slug, { value }]) => [slug, value])),
    notice:
      unread === 0
        ? ''
        : `The record of ${unread === 1 ? 'one lesson' : `${unread} lessons`} could not be read, so it is not counted here. It is put aside when you next answer one of its problems, not erased.`,
  };
}

/** Counts an answer in the record of its lesson, as the lesson's own page does. */
export function countInLesson(lesson: string, family: string, seed: number, event: PracticeEvent): void {
  progressOf(lesson).change((now) => progressAfter(now, { family, seed, event }));
}

/** Everything that practice keeps of a reader, as a file carries it. */
export interface WholeRecord {
  readonly lessons: AllProgress;
  readonly review: Review;
  readonly sheets: AllAnswers;
}

/** Nothing kept. */
export const emptyRecord: WholeRecord = { lessons: {}, review: { asked: 0, kinds: {} }, sheets: {} };

/** The text of a file with the whole record. */
export function fileOfRecord(record: WholeRecord): string {
  return `${JSON.stringify({ practice: 'ring-and-ruler', version: 1, ...record }, undefined, 1)}\n`;
}

/** Reads a file that {@link fileOfRecord} has written; in words what is wrong with any other. Lessons that are not of this workbook are refused. */
export function readRecord(text: string, slugs: readonly string[]): WholeRecord | string {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return 'This file is not JSON: it was not saved here, or it was damaged on its way.';
  }
  const { practice, version, lessons, review, sheets } = (
    typeof value === 'object' && value !== null ? value : {}
  ) as Record<string, unknown>;
  if (practice !== 'ring-and-ruler')
    return 'This file is no record of practice: it lacks “practice”: “ring-and-ruler”.';
  if (version !== 1) return `This file is of version ${String(version).slice(0, 8)}; this workbook reads version 1.`;
  if (typeof lessons !== 'object' || lessons === null || Array.isArray(lessons))
    return 'This file has no list of lessons.';
  for (const [slug, progress] of Object.entries(lessons)) {
    if (!slugs.includes(slug)) return `This file speaks of a lesson “${slug.slice(0, 24)}”, which is not here.`;
    if (!isProgress(progress)) return `What this file says of the lesson “${slug}” cannot be true.`;
  }
  if (!isReview(review)) return 'What this file says of the review cannot be read.';
  if (!isAnswers(sheets)) return 'What this file says of answers to sheets cannot be read.';
  return { lessons: lessons as AllProgress, review, sheets };
}

/** Puts a whole record in the place of what is kept: an empty one erases it. */
export function keepRecord({ lessons, review, sheets }: WholeRecord, slugs: readonly string[]): void {
  for (const slug of slugs) progressOf(slug).write(lessons[slug] ?? {});
  keptReview.write(review);
  keptAnswers.write(sheets);
}

/** Whether a kind was slipped on in its lesson: not every problem of it was right at the first answer. */
export const wasSlippedOn = ({ worked, atOnce }: FamilyScore): boolean => atOnce < worked;

/** Whether a key of the browser's storage is of what practice keeps. */
export function isOfRecord(key: string): boolean {
  return /^ring-and-ruler\.(?:review$|sheet-answers$|progress\.)/.test(key);
}
