import { describe, expect, it } from 'vitest';
import { stroke } from './canvas.ts';

describe('a stroke', () => {
  it('covers its width, however coarse the samples and wherever they fall', () => {
    for (const pitch of [0.01, 0.05, 0.3, 1.7]) {
      for (const shift of [0, 0.2, 0.5, 0.83]) {
        let covered = 0;
        for (let index = -300; index < 300; index++)
          covered += pitch * stroke(Math.abs((index + shift) * pitch), 0.04, pitch);
        expect(covered).toBeCloseTo(0.08, 9);
      }
    }
  });

  it('covers a sample wholly at most', () => {
    expect(stroke(0, 5, 0.1)).toBe(1);
    expect(stroke(5.2, 5, 0.1)).toBe(0);
  });
});
