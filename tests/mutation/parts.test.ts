import { describe, expect, it } from 'vitest';
import { liesIn, linesOfPart } from './parts.ts';
import { nameOf, partOf, scores, withResult, type Results } from './results.ts';

describe('a part of a topic', () => {
  const parts = [1, 2, 3, 4].map((part) => linesOfPart('gaussian', part, 4));

  it('is disjoint from the others, and all of them are the topic, about as much in each', () => {
    const whole = linesOfPart('gaussian', 1, 1);
    expect([...parts.flat()].sort()).toEqual([...whole].sort());
    expect(new Set(whole).size).toBe(whole.length);
    for (const part of parts) expect(Math.abs(part.length - whole.length / 4)).toBeLessThan(1);
  });

  it('is the same each time, drawn from all over the topic, as ranges of lines', () => {
    expect(linesOfPart('gaussian', 2, 4)).toEqual(parts[1]);
    const files = parts[1]!.map((range) => range.split(':')[0]);
    expect(new Set(files).size).toBeGreaterThan(5);
    for (const range of parts[1]!) expect(range).toMatch(/^core\/gaussian\/[\w./-]+(?<!\.test)\.ts:\d+-\d+$/);
  });
});

it('a change lies in a part where all its lines do, and in a topic wherever it is', () => {
  const ranges = ['core/a.ts:10-20', 'core/b.ts:1-3'];
  expect([liesIn(ranges, 'core/a.ts', 10, 20), liesIn(ranges, 'core/b.ts', 2, 2)]).toEqual([true, true]);
  expect([liesIn(ranges, 'core/a.ts', 9, 12), liesIn(ranges, 'core/a.ts', 12, 21)]).toEqual([false, false]);
  expect([liesIn(ranges, 'core/c.ts', 2, 2), liesIn(['core/a/**/*.ts'], 'core/a/c.ts', 2, 2)]).toEqual([false, true]);
});

describe('results', () => {
  const tally = (killed: number, survived: number, at = '2026-11-29') => ({ killed, survived, at });

  it('name a topic or one of its parts', () => {
    expect([nameOf('picture'), partOf('picture')]).toEqual(['picture', undefined]);
    expect([nameOf('picture:3/10'), partOf('picture:3/10')]).toEqual(['picture', { part: 3, of: 10 }]);
    for (const bad of ['picture:', 'picture:0/10', 'picture:11/10', 'picture:1.5/10', 'picture:3'])
      expect(() => partOf(bad)).toThrow(/no part of a topic/);
  });

  it('keep parts of the same number beside each other, and neither with the whole', () => {
    const before: Results = { depth: tally(9, 1), 'picture:1/10': tally(8, 2), 'picture:2/10': tally(7, 3) };
    const two = withResult(before, 'picture:2/10', tally(10, 0));
    expect(two).toEqual({ ...before, 'picture:2/10': tally(10, 0) });
    expect(Object.keys(withResult(before, 'picture:2/4', tally(1, 1)))).toEqual(['depth', 'picture:2/4']);
    expect(Object.keys(withResult(before, 'picture', tally(1, 1)))).toEqual(['depth', 'picture']);
    expect(Object.keys(withResult({ picture: tally(1, 1) }, 'picture:1/4', tally(1, 1)))).toEqual(['picture:1/4']);
  });

  it('say of a sample that it is one', () => {
    expect(
      scores({ depth: tally(9, 1), 'picture:1/3': tally(8, 2), 'picture:3/3': tally(7, 3, '2026-11-30') }),
    ).toEqual([
      'depth: 90.0 % of 10 changes noticed (2026-11-29)\n',
      'picture: 75.0 % of 20 changes noticed, 2 of 3 parts of it drawn by chance (2026-11-29, 2026-11-30)\n',
    ]);
    expect(scores({ 'picture:1/2': tally(1, 0), 'picture:2/2': tally(1, 0) })[0]).toBe(
      'picture: 100.0 % of 2 changes noticed (2026-11-29)\n',
    );
  });
});
