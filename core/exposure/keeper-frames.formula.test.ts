import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { printedLine } from '../quantity/printed-line.ts';
import { keeperFrames, keeperFramesFormula } from './keeper-frames.formula.ts';

/** Three frames in ten are in focus. */
const third = { keeperShare: 0.3 };

describe('keeperFrames', () => {
  it('is 9 where three frames in ten are in focus', () => {
    expect(keeperFrames(third)).toBe(9);
  });

  it('misses with all of them at most once in twenty, and with one fewer more often', () => {
    for (const keeperShare of [0.01, 0.1, 0.37, 0.5, 0.8, 0.94]) {
      const frames = keeperFrames({ keeperShare });
      expect((1 - keeperShare) ** frames).toBeLessThanOrEqual(0.05);
      expect((1 - keeperShare) ** (frames - 1)).toBeGreaterThan(0.05);
    }
  });

  it('is 1 from a share of 0.95 on', () => {
    expect(keeperFrames({ keeperShare: 0.95 })).toBe(1);
    expect(keeperFrames({ keeperShare: 1 })).toBe(1);
    expect(keeperFrames({ keeperShare: 0.9499 })).toBe(2);
  });

  it('is said by its line up to what prints as every frame', () => {
    const kindAt = (share: number) => printedLine(keeperFramesFormula, { 'keeper-share': share }).kind;
    expect([0.5, 0.999, 0.9994].map(kindAt)).toEqual(['numbers', 'numbers', 'numbers']);
    expect([0.9996, 1].map(kindAt)).toEqual(['beyond', 'beyond']);
  });

  it('tends to three over the share where keepers are rare', () => {
    expect(keeperFrames({ keeperShare: 1e-9 }) * 1e-9).toEqual(
      closeTo(-Math.log(0.05), { relative: 1e-8, because: 'ln(1 − share) is −share, and frames are whole' }),
    );
  });

  it('refuses a share of zero by name: no number is enough', () => {
    expect(() => keeperFrames({ keeperShare: 0 })).toThrow(OutOfRange);
    expect(() => keeperFrames({ keeperShare: 0 })).toThrow(/keeper-share is 0/);
  });
});
