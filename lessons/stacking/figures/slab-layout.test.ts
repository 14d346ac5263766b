import { describe, expect, test } from 'vitest';
import type { Slab } from './slabs.ts';
import { slabLayout } from './slab-layout.ts';

const box = { width: 680, height: 420, text: 14.5, small: 12.3 };
const stack = (count: number, step: number): Slab[] =>
  Array.from({ length: count }, (_, index) => ({
    near: index * step,
    plane: index * step + 0.5,
    far: index * step + 1,
  }));

describe('a stack from the side', () => {
  test('is drawn to the scale of its title block, the lens on the right', () => {
    const place = slabLayout({ subjectDepth: 3, slabs: stack(4, 0.75), taken: 4 }, box);
    expect(place.nearX - place.farX).toBeCloseTo(3 * place.scale.pixelsPerMillimetre, 6);
    expect(place.first!.plane - place.second!).toBeCloseTo(0.75 * place.scale.pixelsPerMillimetre, 6);
    expect(place.farX).toBeGreaterThan(0);
  });

  test('shows nothing soft where frames overlap and reach the far end', () => {
    expect(slabLayout({ subjectDepth: 3, slabs: stack(4, 0.75), taken: 4 }, box).soft).toBe('');
  });

  test('shows the gaps between frames too far apart, and what a lost end leaves', () => {
    const gaps = slabLayout({ subjectDepth: 4, slabs: stack(3, 1.5), taken: 3 }, box);
    expect(gaps.soft.match(/M/g)).toHaveLength(2);
    const lost = slabLayout({ subjectDepth: 3, slabs: stack(4, 0.75), taken: 2 }, box);
    expect(lost.soft.match(/M/g)).toHaveLength(1);
    expect(lost.lost.match(/M/g)).toHaveLength(2);
  });

  test('draws a subject that no frame was taken of', () => {
    const place = slabLayout({ subjectDepth: 2, slabs: [], taken: 0 }, box);
    expect(place.subject).not.toMatch(/NaN|undefined/);
    expect(place.first).toBeUndefined();
    expect(place.soft.match(/M/g)).toHaveLength(1);
  });
});
