import { afterEach, describe, expect, it, vi } from 'vitest';
import { between, glide } from './glide.ts';

/** Stands in for the browser's frames: each call of the function returned is one. */
function frames(reduced = false) {
  let next: ((now: number) => void) | undefined;
  vi.stubGlobal('matchMedia', () => ({ matches: reduced }));
  vi.stubGlobal('requestAnimationFrame', (call: (now: number) => void) => ((next = call), 1));
  vi.stubGlobal('cancelAnimationFrame', () => (next = undefined));
  return (now: number) => next?.(now);
}

afterEach(() => vi.unstubAllGlobals());

describe('a number on its way', () => {
  it('goes by equal ratios between positive ends and by equal steps from nothing', () => {
    expect(between(4, 16, 0.5)).toBe(8);
    expect(between(0, 72, 0.25)).toBe(18);
    expect(between(-2, 2, 0.5)).toBe(0);
  });

  it('ends exactly where it should', () => {
    expect(between(0.1, 0.3, 1)).toBe(0.3);
    expect(between(7, 7, 0.3)).toBe(7);
  });
});

describe('a change that is seen', () => {
  it('passes through what lies between and ends exactly', () => {
    const next = frames();
    const seen: number[] = [];
    glide({ extension: 12, lens: 1 }, { extension: 72, lens: 1 }, ({ extension }) => seen.push(extension));
    for (let now = 0; now <= 1000; now += 100) next(now);
    expect(seen[0]).toBe(12);
    expect(seen.at(-1)).toBe(72);
    expect(seen.length).toBeGreaterThan(8);
    expect([...seen].sort((one, other) => one - other)).toEqual(seen);
  });

  it('is there at once where the reader wants no motion', () => {
    frames(true);
    const show = vi.fn();
    glide({ extension: 12 }, { extension: 72 }, show);
    expect(show.mock.calls).toEqual([[{ extension: 72 }]]);
  });

  it('can be cut short, and is shown no more after that', () => {
    const next = frames();
    const show = vi.fn();
    const arrive = glide({ extension: 12 }, { extension: 72 }, show);
    next(0);
    arrive();
    expect(show).toHaveBeenLastCalledWith({ extension: 72 });
    const calls = show.mock.calls.length;
    next(100);
    arrive();
    expect(show.mock.calls.length).toBe(calls);
  });
});
