import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  firstWait,
  isReviewRecord,
  longestWait,
  nextKind,
  reviewAfter,
  waitAfterSlip,
  type ReviewRecord,
} from './review.ts';

const kinds = ['one/a', 'two/a', 'one/b', 'two/b', 'one/c', 'two/c', 'one/d', 'two/d', 'one/e'];
const empty: ReviewRecord = { asked: 0, kinds: {} };
const answer = (review: ReviewRecord, kind: string, isRight: boolean) =>
  reviewAfter(review, { kind, seed: (review.kinds[kind]?.seed ?? 0) + 1, isRight });

/** The kinds asked in *count* questions, of which those that *slips* names are answered wrongly, by their place. */
function asked(count: number, slips: readonly number[] = [], of: readonly string[] = kinds): readonly string[] {
  let review = empty;
  const order: string[] = [];
  for (let place = 0; place < count; place++) {
    const kind = nextKind(review, of, order.at(-1));
    order.push(kind);
    review = answer(review, kind, !slips.includes(place));
  }
  return order;
}

describe('the rule of the review', () => {
  it('asks what was never asked in the order it is given', () => {
    expect(asked(kinds.length)).toEqual(kinds);
  });

  it('asks what was slipped on again after three others', () => {
    expect(asked(5, [0])[4]).toBe('one/a');
    expect(asked(8, [1, 5])[5]).toBe('two/a');
    expect(asked(9, [1, 5])[8]).not.toBe('two/a');
    expect(asked(10, [1, 5])[9]).toBe('two/a');
  });

  it('lets what is right wait ten others, then twice as many each time, and at most 160', () => {
    let review = empty;
    const waits = Array.from({ length: 7 }, () => {
      review = answer(review, 'one/a', true);
      return review.kinds['one/a']!.wait;
    });
    expect(waits).toEqual([firstWait, 20, 40, 80, longestWait, longestWait, longestWait]);
    expect(review.kinds['one/a']).toMatchObject({ asked: 7, right: 7, due: 7 + longestWait });
    review = answer(review, 'one/a', false);
    expect(review.kinds['one/a']).toMatchObject({ wait: waitAfterSlip, slip: { seed: 8 } });
    review = answer(review, 'one/a', true);
    expect(review.kinds['one/a']).toMatchObject({ wait: firstWait });
    expect(review.kinds['one/a']).not.toHaveProperty('slip');
  });

  it('asks what is slipped on always at least as often as what never is', () => {
    fc.assert(
      fc.property(fc.constantFrom(...kinds), (weak) => {
        let review = empty;
        let last: string | undefined;
        for (let place = 0; place < 60; place++) {
          last = nextKind(review, kinds, last);
          review = answer(review, last, last !== weak);
        }
        for (const kind of kinds) expect(review.kinds[weak]!.asked).toBeGreaterThanOrEqual(review.kinds[kind]!.asked);
        expect(review.kinds[weak]!.asked).toBeGreaterThan(12);
      }),
      { seed: 1 },
    );
  });

  it('asks no kind twice in a row, but where it is the only one', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(30)), (slips) => {
        const order = asked(30, slips);
        expect(order.every((kind, place) => kind !== order[place - 1])).toBe(true);
      }),
      { seed: 1 },
    );
    expect(asked(3, [], ['one/a'])).toEqual(['one/a', 'one/a', 'one/a']);
  });
});

describe('isReviewRecord', () => {
  const good = answer(answer(empty, 'one/a', true), 'two/a', false);

  it('takes what it has made, stored and read back', () => {
    expect(isReviewRecord(JSON.parse(JSON.stringify(good)))).toBe(true);
  });

  it.each([
    ['nothing', null],
    ['a list', []],
    ['no count', { kinds: {} }],
    ['a broken count', { ...good, asked: 0.5 }],
    ['a kind without numbers', { ...good, kinds: { a: {} } }],
    ['more right than asked', { ...good, kinds: { a: { ...good.kinds['one/a'], right: 2 } } }],
    ['a slip without a problem', { ...good, kinds: { a: { ...good.kinds['one/a'], slip: {} } } }],
  ])('refuses %s', (_, value) => {
    expect(isReviewRecord(value)).toBe(false);
  });
});
