import { describe, expect, it } from 'vitest';
import { unbroken } from './steps.ts';

describe('unbroken', () => {
  it('keeps a number beside its unit and breaks anywhere else', () => {
    expect(unbroken('Is a 28 mm lens at 2 m wider by 1 stop, or 2 stops, in 3 millions of 5 men?')).toBe(
      'Is a 28\u00a0mm lens at 2\u00a0m wider by 1\u00a0stop, or 2\u00a0stops, in 3 millions of 5 men?',
    );
  });
});
