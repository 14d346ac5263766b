import { describe, expect, it } from 'vitest';
import { meet } from '#site/figures/sheet/boxes.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { decadesOf, limitsLayout, type LimitsGiven } from './limits.ts';

const given: LimitsGiven = {
  magnification: 1,
  exposureTime: 1 / 60,
  circleOfConfusion: 0.02,
  engraved: 90,
  slowest: 1 / 250,
  curves: [
    { name: 'shake-rate', word: 'turning', timeAt: (m) => 0.01 / m },
    { name: 'sideways-speed', word: 'swaying', timeAt: (m) => 0.02 / m },
    { name: 'subject-speed', word: 'the subject', timeAt: () => undefined },
    { name: 'exposure-time', word: 'all together', timeAt: (m) => 0.004 / m },
  ],
};
const walls = [
  { width: 695, height: 450, text: 14.5, small: 12.3 },
  { width: 374, height: 340, text: 12.5, small: 10.6 },
  { width: 1229, height: 557, text: 28.8, small: 28.8 },
];

describe('the decades of the longest times', () => {
  it('are whole, and hold the time that is set, the rule and all together up to five times life size', () => {
    const [least, most] = decadesOf(given, [0.02, 5, 20]);
    expect([least, most].map((end) => Math.log10(end) % 1)).toEqual([closeTo(0, near), closeTo(0, near)]);
    expect(least).toBeLessThan(0.004 / 5);
    expect(most).toBeGreaterThan(0.004 / 0.02);
    expect(decadesOf({ ...given, exposureTime: 30 }, [1])[1]).toBeGreaterThan(30);
  });
});
const near = { absolute: 1e-9, because: 'rounding' };

describe.each(walls)('the plot of longest times, $width wide', (box) => {
  it('has the time where it is, the reader’s place on the curve, and words on nothing', () => {
    const { here, level, frame, labels } = limitsLayout(given, box);
    expect(here).toEqual({ x: frame.x.at(1), y: frame.y.at(1 / 250) });
    expect(level.y).toBe(frame.y.at(1 / 60));
    for (const [index, { box: one }] of labels.entries())
      for (const other of labels.slice(index + 1)) expect(meet(one, other.box)).toBe(false);
    expect(labels.map(({ key }) => key)).toEqual(expect.arrayContaining(['here', 'level', 'rule', 'exposure-time']));
  });

  it('says so where the lens has no such focus, and where the longest time is off the sheet', () => {
    const textAt = (slowest: number | undefined) =>
      limitsLayout({ ...given, slowest }, box).labels.find(({ key }) => key === 'here')?.text;
    expect(textAt(undefined)).toBe('no such focus');
    expect(textAt(1e-9)).toMatch(/off the sheet$/);
  });
});
