import { describe, expect, it } from 'vitest';
import { compared } from './gear.ts';

describe('the lenses that are compared', () => {
  it.each([undefined, 'lens-50', 'lens-28', 'lens-90', 'lens-200'])(
    'are three with one held, where %s is chosen',
    (chosen) => {
      const three = compared(chosen);
      expect(three).toHaveLength(3);
      expect(three.filter(({ isHeld }) => isHeld).map(({ slug }) => slug)).toEqual([chosen]);
      expect(new Set(three.map(({ slug }) => slug)).size).toBe(3);
    },
  );
});
