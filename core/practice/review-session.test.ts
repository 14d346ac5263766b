import { describe, expect, it } from 'vitest';
import {
  isReview,
  questionsInSession,
  sessionAnswered,
  sessionBegun,
  sessionGoneOn,
  type Review,
} from './review-session.ts';

const kinds = ['one/a', 'two/a', 'one/b'];
const seedOf = (kind: string) => (kind === 'two/a' ? 41 : 0);
const begun = sessionBegun({ asked: 0, kinds: {} }, { kinds, at: 1000, seedOf });
const open = (review: Review) => review.session!.questions.at(-1)!;
const answered = (review: Review, isRight: boolean) =>
  sessionAnswered(review, { ...open(review), isRight, ...(!isRight && { mistake: 'upside-down' }) });
const goneOn = (review: Review) => sessionGoneOn(review, { from: review.session!.questions.length, at: 9000, seedOf });

describe('a session', () => {
  it('opens with the first kind and its first problem, and goes on with numbers not worked before', () => {
    expect(open(begun)).toEqual({ kind: 'one/a', seed: 1 });
    expect(open(goneOn(answered(begun, true)))).toEqual({ kind: 'two/a', seed: 42 });
  });

  it('counts the first answer to a question and no other, from whichever tab', () => {
    const once = answered(begun, false);
    expect(once).toMatchObject({ asked: 1, session: { questions: [{ isRight: false, mistake: 'upside-down' }] } });
    expect(answered(once, true)).toBe(once);
    expect(sessionAnswered(begun, { kind: 'one/b', seed: 1, isRight: true })).toBe(begun);
  });

  it('goes on from the question that was read, once it is answered', () => {
    expect(goneOn(begun)).toBe(begun);
    const next = goneOn(answered(begun, true));
    // Another tab, still at the first question, asks to go on as well.
    expect(sessionGoneOn(next, { from: 1, at: 9000, seedOf })).toBe(next);
  });

  it('asks a kind twice at most, however often it is slipped on, while there are others', () => {
    const many = ['a/1', 'a/2', 'a/3', 'a/4', 'a/5', 'a/6'];
    let review = sessionBegun({ asked: 0, kinds: {} }, { kinds: many, at: 0, seedOf });
    for (let place = 1; place < questionsInSession; place++) review = goneOn(answered(review, false));
    const asked = review.session!.questions.map(({ kind }) => kind);
    expect(asked.slice(0, 8)).toEqual(['a/1', 'a/2', 'a/3', 'a/4', 'a/1', 'a/2', 'a/3', 'a/4']);
    expect(asked.slice(8)).toEqual(['a/5', 'a/6']);
  });

  it('ends after ten questions and stays ended', () => {
    let review = begun;
    for (let place = 0; place < questionsInSession; place++) review = goneOn(answered(review, place % 2 === 0));
    expect(review.session).toMatchObject({ ended: 9000 });
    expect(review.session!.questions).toHaveLength(questionsInSession);
    expect(goneOn(review)).toBe(review);
    expect(isReview(JSON.parse(JSON.stringify(review)))).toBe(true);
    const anew = sessionBegun(review, { kinds, at: 20_000, seedOf });
    expect(anew).toMatchObject({ asked: 10, session: { began: 20_000 } });
    expect(anew.session).not.toHaveProperty('ended');
  });

  it.each([
    ['no kinds', { kinds: [] }],
    ['no question', { questions: [] }],
    ['no beginning', { began: 'now' }],
    ['a question without a number', { questions: [{ kind: 'one/a' }] }],
    ['a broken question', { questions: [null] }],
  ])('is not taken from storage with %s', (_, change) => {
    expect(isReview({ ...begun, session: { ...begun.session, ...change } })).toBe(false);
  });
});
