import { describe, expect, it } from 'vitest';
import { beginOf, dealtFrames, secondsOf } from './dealt.ts';
import { Hand } from './hand.svelte.ts';

describe('a hand that rocks', () => {
  it('rests until it is asked, with its first forty frames taken', () => {
    const { turn, taken, isRocking, seconds } = new Hand();
    expect({ turn, taken, isRocking, seconds }).toEqual({
      turn: 0,
      taken: dealtFrames,
      isRocking: false,
      seconds: undefined,
    });
  });

  it('takes the next forty one by one as it rocks, and goes on with the next until it is stopped', () => {
    const hand = new Hand();
    hand.toggle(false);
    expect([hand.turn, hand.taken, hand.isRocking]).toEqual([1, 0, true]);
    const counts: number[] = [];
    while (hand.turn === 1) {
      counts.push(hand.taken);
      hand.advance(1 / 60);
    }
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
    expect(new Set(counts).size).toBe(dealtFrames + 1);
    expect([hand.turn, hand.taken]).toEqual([2, 0]);
    hand.toggle(false);
    expect(hand.isRocking).toBe(false);
  });

  it('goes on where it was stopped', () => {
    const hand = new Hand();
    hand.toggle(false);
    hand.advance(5);
    const { turn, taken, seconds } = hand;
    hand.toggle(false);
    hand.toggle(false);
    expect(hand).toMatchObject({ turn, taken, seconds, isRocking: true });
    expect(taken).toBe(secondsOf(1).filter((second) => second <= beginOf(1) + 5).length);
  });

  it('deals at once what is left of forty, then forty more', () => {
    const hand = new Hand();
    expect(hand.isAmidDeal).toBe(false);
    hand.toggle(false);
    hand.advance(5);
    expect(hand.isAmidDeal).toBe(true);
    hand.deal();
    expect(hand).toMatchObject({ turn: 1, taken: dealtFrames, isRocking: false, seconds: undefined });
    expect(hand.isAmidDeal).toBe(false);
    hand.deal();
    expect(hand).toMatchObject({ turn: 2, taken: dealtFrames });
  });

  it('shows the frames without rocking to who wants no motion', () => {
    const hand = new Hand();
    hand.toggle(true);
    expect(hand).toMatchObject({ turn: 1, taken: dealtFrames, isRocking: false, seconds: undefined });
  });
});
