import { describe, expect, it } from 'vitest';
import { rungGiving } from './rung-giving.ts';

const ladder = [0.25, 0.5, 1, 2, 4];
/** From one side of life size to the other a subject comes and goes: 2 + m + 1/m. */
const distance = (m: number) => 2 + m + 1 / m;

describe('the rung that a hand means', () => {
  it('is the nearest by its answer', () => {
    expect(rungGiving(ladder, (rung) => 100 * rung, 180)).toBe(2);
    expect(rungGiving(ladder, (rung) => -rung, -9)).toBe(4);
  });

  it('stays on the side that it was taken on', () => {
    expect(rungGiving(ladder, distance, 4.6, 0.25)).toBe(0.5);
    expect(rungGiving(ladder, distance, 4.6, 4)).toBe(2);
  });

  it('is the one of the least answer where the hand goes beyond that, and may be it from either side', () => {
    for (const from of [0.25, 1, 4]) expect(rungGiving(ladder, distance, 0, from)).toBe(1);
  });

  it('is none without an answer while another has one', () => {
    expect(rungGiving(ladder, (rung) => (rung < 1 ? Infinity : rung), 1e9)).toBe(4);
  });
});
