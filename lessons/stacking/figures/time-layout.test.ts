import { describe, expect, test } from 'vitest';
import { timeLayout, type TimeState } from './time-layout.ts';

const box = { width: 680, height: 420, text: 14.5, small: 12.3 };
const state: TimeState = { frameCount: 5, taken: 3, exposureTime: 0.5, wait: 2, stackTime: 10.5, timeLimit: 6 };

describe('a line of time', () => {
  test('has a bar for every frame, those in time apart from those after the deadline', () => {
    const place = timeLayout(state, box);
    expect(place.taken.match(/M/g)).toHaveLength(3);
    expect(place.lost.match(/M/g)).toHaveLength(2);
    expect(place.deadlineX).toBeCloseTo(place.left + 6 * place.perSecond, 6);
    expect(place.deadlineX).toBeLessThan(place.endX);
  });

  test('keeps a flash visible beside long waits', () => {
    const width = /h([\d.]+)V/.exec(timeLayout({ ...state, exposureTime: 1e-4 }, box).taken)![1];
    expect(Number(width)).toBe(1.5);
  });

  test('says so when the deadline lies beyond the sheet, or the bars are too many to draw', () => {
    expect(timeLayout({ ...state, timeLimit: 1e6 }, box)).toMatchObject({ isBeyond: true, isCut: false });
    expect(timeLayout({ ...state, frameCount: 5000, taken: 5000, stackTime: 12499 }, box).isCut).toBe(true);
  });
});
