import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { axis, type AxisPlan } from './axis.ts';

const log: AxisPlan = { scale: 'log', domain: [0.02, 20], title: 'm', format: String };
const linear: AxisPlan = { scale: 'linear', domain: [0, 1], title: 'contrast', format: String };
const rounding = { relative: 1e-12, because: 'a logarithm and back' };

describe('an axis', () => {
  it('puts the ends of its domain at the ends of its range', () => {
    const across = axis(log, [50, 450], 40);
    expect([across.at(0.02), across.at(20)]).toEqual([50, 450]);
  });

  it('gives equal ratios equal lengths when logarithmic', () => {
    const across = axis(log, [0, 300], 40);
    expect(across.at(2) - across.at(0.2)).toEqual(closeTo(across.at(0.2) - across.at(0.02), rounding));
  });

  it('knows the value at a position', () => {
    for (const plan of [log, linear]) {
      const across = axis(plan, [300, 20], 40);
      expect(across.valueAt(across.at(0.37))).toEqual(closeTo(0.37, rounding));
    }
  });

  it('has ticks inside the domain only, fewer where there is less room', () => {
    const wide = axis(log, [0, 900], 40).ticks;
    const narrow = axis(log, [0, 200], 60).ticks;
    expect(wide.length).toBeGreaterThan(narrow.length);
    expect(narrow.map(({ label }) => label)).toEqual(['0.1', '1', '10']);
  });

  it('keeps to a series of one’s own where the trade has one', () => {
    const stops = { ...log, domain: [2, 16] as const, ticks: [1.4, 2, 2.8, 4, 16, 22] };
    expect(axis(stops, [0, 100], 10).ticks.map(({ value }) => value)).toEqual([2, 2.8, 4, 16]);
  });
});
