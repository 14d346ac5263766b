import { describe, expect, it } from 'vitest';
import { bends, linePath } from './line-path.ts';

describe('a line without the points that it passes anyway', () => {
  const arc = Array.from({ length: 181 }, (_, at) => {
    const angle = (at * Math.PI) / 180;
    return [100 * Math.cos(angle), 100 * Math.sin(angle)] as const;
  });

  it('has the ends alone of a straight one, and a corner where there is one', () => {
    expect(
      linePath([
        [0, 0],
        [1, 1],
        [2, 2],
        [5, 5],
      ]),
    ).toBe('M0.0 0.0L5.0 5.0');
    expect(
      linePath([
        [0, 0],
        [2, 0],
        [4, 0],
        [4, 3],
      ]),
    ).toBe('M0.0 0.0L4.0 0.0L4.0 3.0');
    expect(
      bends([
        [0, 0],
        [0, 0],
        [0, 0],
      ]),
    ).toHaveLength(2);
  });

  // A chord of a circle of radius r that spans the angle a lies r(1 − cos(a/2)) inside it.
  it('keeps of an arc what its chords need to stay within what is asked, and no multiple of that', () => {
    const within = 0.1;
    const kept = bends(arc, within);
    const widest = 2 * Math.acos(1 - within / 100);
    for (const [at, [x, y]] of kept.slice(1).entries()) {
      const [fromX, fromY] = kept[at]!;
      // Half a degree is as near as the points lie to where one would be best.
      expect(2 * Math.asin(Math.hypot(x - fromX, y - fromY) / 200)).toBeLessThan(widest + Math.PI / 180);
    }
    expect(kept.length).toBeLessThan((2 * Math.PI) / widest);
    expect([kept[0], kept.at(-1)]).toEqual([arc[0], arc.at(-1)]);
  });

  it('comes back on itself where the points do', () => {
    expect(
      bends([
        [0, 0],
        [10, 0],
        [5, 0],
      ]),
    ).toEqual([
      [0, 0],
      [10, 0],
      [5, 0],
    ]);
  });
});
