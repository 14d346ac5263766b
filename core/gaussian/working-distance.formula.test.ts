import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { workingDistance } from './working-distance.formula.ts';

describe('workingDistance', () => {
  it('is 120 mm for H 30 mm behind the rim and a subject 150 mm from H', () => {
    expect(workingDistance({ subjectDistance: 150, frontPrincipalDepth: 30 })).toBe(120);
  });

  it('loses just what the rim gains', () => {
    const bare = workingDistance({ subjectDistance: 150, frontPrincipalDepth: 30 });
    expect(workingDistance({ subjectDistance: 150, frontPrincipalDepth: 42 })).toBe(bare - 12);
  });

  it('is negative where the sharp plane lies inside the lens, which is an answer', () => {
    expect(workingDistance({ subjectDistance: 45, frontPrincipalDepth: 60 })).toBe(-15);
  });

  it('is zero where the sharp plane touches the rim', () => {
    expect(workingDistance({ subjectDistance: 60, frontPrincipalDepth: 60 })).toBe(0);
  });

  it('refuses an infinite subject distance and a depth that is no number', () => {
    expect(() => workingDistance({ subjectDistance: Infinity, frontPrincipalDepth: 0 })).toThrow(OutOfRange);
    expect(() => workingDistance({ subjectDistance: 100, frontPrincipalDepth: NaN })).toThrow(
      /front-principal-depth is NaN/,
    );
  });
});
