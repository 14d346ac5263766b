import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frameStepFormula } from '#core/stack/frame-step.formula.ts';
import { focusDistanceFormula } from '#core/gaussian/focus-distance.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { valueIn } from '#tests/support/sample.ts';
import { pulledTo } from './pulled-to.ts';

const range = { least: -0.5, most: 0.9 };
const pulled = (step: number, depth: number) =>
  pulledTo(frameStepFormula, { ask: 'overlap', given: { 'frame-step': step, 'depth-of-field': depth }, range }, 0.25);

describe('pulling on what a formula gives', () => {
  it('finds the overlap of a step as 1 − Δ/T does, held to the range', () => {
    fc.assert(
      fc.property(valueIn([0.01, 100]), valueIn([0.001, 3]), (depth, share) => {
        const exact = Math.min(range.most, Math.max(range.least, 1 - share));
        expect(pulled(share * depth, depth)).toEqual(
          closeTo(exact, { absolute: 1e-12, because: 'the overlap is halved to its last digit' }),
        );
      }),
    );
  });

  it('stops at the end that comes nearest', () => {
    expect(pulled(1e6, 2)).toBe(range.least);
    expect(pulled(0, 2)).toBe(range.most);
  });

  it('stays on the side where the hand is, of two that do', () => {
    const given = { 'focus-distance': 225, 'focal-length': 50, 'principal-separation': 0 };
    const from = (now: number) =>
      pulledTo(focusDistanceFormula, { ask: 'magnification', given, range: { least: 0.02, most: 20 } }, now);
    expect([from(0.3), from(3)]).toEqual([0.5, 2]);
  });

  it('hands on what is wrong with the other numbers', () => {
    expect(() => pulled(1, -2)).toThrow(/depth-of-field/);
  });
});
