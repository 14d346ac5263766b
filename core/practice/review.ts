import { isSeed } from './seed.ts';

/** How one kind of problem stands in a review; plain data that can be stored. */
export interface KindRecord {
  /** Number of the problem asked last. */
  readonly seed: number;
  /** It is asked again once so many questions have been asked in all. */
  readonly due: number;
  /** So many other questions come before it. */
  readonly wait: number;
  /** Times it was asked. */
  readonly asked: number;
  /** Of these, answered rightly at the first answer. */
  readonly right: number;
  /** What was slipped on last, until it is right at the first answer: the problem's number, and the slip where it was a known one. */
  readonly slip?: { readonly seed: number; readonly mistake?: string };
}

/** Everything a review remembers; kinds by `lesson/family`. */
export interface ReviewRecord {
  /** Questions asked in all. */
  readonly asked: number;
  readonly kinds: Readonly<Record<string, KindRecord>>;
}

/** Other questions that come before a kind that was slipped on. */
export const waitAfterSlip = 3;
/** Other questions that come before a kind that was right the first time it was asked, or the first time after a slip. */
export const firstWait = 10;
/** The longest wait, whatever was right how often. */
export const longestWait = 160;

/** What was made of a question: only the first answer counts, and a look at the working is a slip. */
export interface ReviewAnswer {
  readonly kind: string;
  readonly seed: number;
  readonly isRight: boolean;
  /** The known slip, if it was one. */
  readonly mistake?: string | undefined;
}

/**
 * *review* after a question has been answered. A slip comes back after {@link waitAfterSlip} others; what is right waits for {@link firstWait}, and then twice
 * as long each time, up to {@link longestWait}.
 */
export function reviewAfter<R extends ReviewRecord>(review: R, { kind, seed, isRight, mistake }: ReviewAnswer): R {
  const before = Object.hasOwn(review.kinds, kind) ? review.kinds[kind] : undefined;
  const asked = review.asked + 1;
  const wait = isRight ? Math.min(longestWait, Math.max(firstWait, 2 * (before?.wait ?? 0))) : waitAfterSlip;
  const record: KindRecord = {
    seed,
    due: asked + wait,
    wait,
    asked: (before?.asked ?? 0) + 1,
    right: (before?.right ?? 0) + Number(isRight),
    ...(!isRight && { slip: { seed, ...(mistake !== undefined && { mistake }) } }),
  };
  return { ...review, asked, kinds: { ...review.kinds, [kind]: record } };
}

/**
 * The kind to ask next: what is due, of that what waited shortest, so slips first, and then what has been due longest; then what was never asked, in the order
 * of *kinds*; then what is due soonest. The kind in *last* only where there is no other.
 *
 * @param kinds at least one
 */
export function nextKind({ asked, kinds: records }: ReviewRecord, kinds: readonly string[], last?: string): string {
  const others = kinds.filter((kind) => kind !== last);
  const open = others.length > 0 ? others : kinds;
  const known = open.filter((kind) => Object.hasOwn(records, kind));
  const first = (list: readonly string[], ...by: readonly ((record: KindRecord) => number)[]) =>
    [...list].sort((one, other) => {
      const differences = by.map((of) => of(records[one]!) - of(records[other]!));
      return differences.find((difference) => difference !== 0) ?? 0;
    })[0];
  const due = known.filter((kind) => records[kind]!.due <= asked);
  const fresh = open.find((kind) => !Object.hasOwn(records, kind));
  return first(due, ({ wait }) => wait, dueAt) ?? fresh ?? first(known, dueAt)!;
}

const dueAt = ({ due }: KindRecord) => due;

/** True for what {@link reviewAfter} can build on: guards what comes out of storage or a file. */
export function isReviewRecord(value: unknown): value is ReviewRecord {
  if (!isObject(value)) return false;
  const { asked, kinds } = value;
  return isCount(asked) && isObject(kinds) && Object.values(kinds).every(isKindRecord);
}

function isKindRecord(value: unknown): value is KindRecord {
  if (!isObject(value)) return false;
  const { seed, due, wait, asked, right, slip } = value;
  const areCounts = [due, wait, asked, right].every(isCount);
  return isSeed(seed) && areCounts && (right as number) <= (asked as number) && (slip === undefined || isSlip(slip));
}

const isSlip = (value: unknown) =>
  isObject(value) && isSeed(value['seed']) && ['string', 'undefined'].includes(typeof value['mistake']);
const isCount = (value: unknown) => Number.isSafeInteger(value) && (value as number) >= 0;
const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
