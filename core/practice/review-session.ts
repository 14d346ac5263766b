import { isReviewRecord, nextKind, reviewAfter, type ReviewAnswer, type ReviewRecord } from './review.ts';
import { isSeed, nextSeed } from './seed.ts';

/** So many questions make a session. */
export const questionsInSession = 10;
/** A session is meant to take so long, minutes. */
export const minutesOfSession = 10;

/** So often a kind comes in one session, while there are others. */
const mostInSession = 2;

/** One question of a session. */
export interface SessionQuestion {
  readonly kind: string;
  readonly seed: number;
  /** Of the first answer; undefined until there is one. */
  readonly isRight?: boolean;
  readonly mistake?: string;
}

/** Ten questions in a row. */
export interface Session {
  /** When it began, milliseconds since 1970, as the page's clock has it. */
  readonly began: number;
  /** When its last question was answered. */
  readonly ended?: number;
  /** The kinds that it asks, in the order in which new ones come. */
  readonly kinds: readonly string[];
  /** Asked so far; the last is the one that is open. */
  readonly questions: readonly SessionQuestion[];
}

/** A review and the session that is under way or was the last. */
export interface Review extends ReviewRecord {
  readonly session?: Session;
}

/** *review* with a new session and its first question. *seedOf* is the number of a kind's problem that was worked last elsewhere, 0 for none. */
export function sessionBegun(
  { session: _, ...review }: Review,
  { kinds, at, seedOf }: { kinds: readonly string[]; at: number; seedOf: (kind: string) => number },
): Review {
  return withQuestion({ ...review, session: { began: at, kinds, questions: [] } }, seedOf);
}

/** *review* with an answer to the open question; the same where it is another question, or has been answered: another tab may have. */
export function sessionAnswered(review: Review, answer: ReviewAnswer): Review {
  const { session } = review;
  const open = session?.questions.at(-1);
  if (!session || !open || open.isRight !== undefined || open.kind !== answer.kind || open.seed !== answer.seed)
    return review;
  const { isRight, mistake } = answer;
  const answered = { ...open, isRight, ...(mistake !== undefined && { mistake }) };
  const questions = [...session.questions.slice(0, -1), answered];
  return { ...reviewAfter(review, answer), session: { ...session, questions } };
}

/** *review* with the next question open, or the session ended; the same while *open*, the number of the question that was read, is not the open one. */
export function sessionGoneOn(
  review: Review,
  { from, at, seedOf }: { from: number; at: number; seedOf: (kind: string) => number },
): Review {
  const { session } = review;
  if (!session || session.ended !== undefined || session.questions.length !== from) return review;
  if (session.questions.at(-1)!.isRight === undefined) return review;
  if (session.questions.length >= questionsInSession) return { ...review, session: { ...session, ended: at } };
  return withQuestion(review, seedOf);
}

function withQuestion(review: Review, seedOf: (kind: string) => number): Review {
  const session = review.session!;
  const times = (kind: string) => session.questions.filter((one) => one.kind === kind).length;
  const open = session.kinds.filter((kind) => times(kind) < mostInSession);
  const kind = nextKind(review, open.length > 0 ? open : session.kinds, session.questions.at(-1)?.kind);
  const last = Math.max(seedOf(kind), Object.hasOwn(review.kinds, kind) ? review.kinds[kind]!.seed : 0);
  const question = { kind, seed: last === 0 ? 1 : nextSeed(last) };
  return { ...review, session: { ...session, questions: [...session.questions, question] } };
}

/** True for what the functions here can build on: guards what comes out of storage or a file. */
export function isReview(value: unknown): value is Review {
  if (!isReviewRecord(value)) return false;
  const { session } = value as Review;
  return session === undefined || isSession(session);
}

function isSession(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return false;
  const { began, ended, kinds, questions } = value as Record<string, unknown>;
  const isText = (one: unknown) => typeof one === 'string';
  return (
    Number.isFinite(began) &&
    (ended === undefined || Number.isFinite(ended)) &&
    Array.isArray(kinds) &&
    kinds.length > 0 &&
    kinds.every(isText) &&
    Array.isArray(questions) &&
    questions.length > 0 &&
    questions.length <= questionsInSession &&
    questions.every(isQuestion)
  );
}

function isQuestion(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return false;
  const { kind, seed, isRight, mistake } = value as Record<string, unknown>;
  return (
    typeof kind === 'string' &&
    isSeed(seed) &&
    ['boolean', 'undefined'].includes(typeof isRight) &&
    ['string', 'undefined'].includes(typeof mistake)
  );
}
