import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProgress, progressAfter, type PracticeEvent, type Progress } from './score.ts';

const family = 'rings-on-a-lens';

/** Progress after these events, each a number of a problem and what happened. */
function after(...events: readonly (readonly [seed: number, event: PracticeEvent])[]): Progress {
  return events.reduce<Progress>((progress, [seed, event]) => progressAfter(progress, { family, seed, event }), {});
}

describe('progressAfter', () => {
  it('counts a right first answer as right at once', () => {
    expect(after([1, 'right'])).toEqual({
      [family]: { seed: 1, tries: 1, closed: true, worked: 1, atOnce: 1, later: 0 },
    });
  });

  it('counts a right answer after wrong ones as right later, once', () => {
    const score = after([1, 'mistake'], [1, 'unit-slip'], [1, 'wrong'], [1, 'right'], [1, 'right'])[family];
    expect(score).toEqual({ seed: 1, tries: 4, closed: true, worked: 1, atOnce: 0, later: 1 });
  });

  it('counts no answer given after the working was looked at', () => {
    const score = after([1, 'working-shown'], [1, 'right'])[family];
    expect(score).toMatchObject({ closed: true, worked: 1, atOnce: 0, later: 0 });
  });

  it('begins anew with the next problem and keeps what was counted', () => {
    const score = after([1, 'right'], [2, 'wrong'], [3, 'right'])[family];
    expect(score).toEqual({ seed: 3, tries: 1, closed: true, worked: 3, atOnce: 2, later: 0 });
  });

  it('leaves the other families and what it was given as they were', () => {
    const before = after([1, 'right']);
    const copy = structuredClone(before);
    expect(progressAfter(before, { family: 'other', seed: 9, event: 'wrong' })).toMatchObject(copy);
    expect(before).toEqual(copy);
  });

  it('takes a family named like a property of every object for one not begun', () => {
    expect(progressAfter({}, { family: 'constructor', seed: 1, event: 'right' })['constructor']).toMatchObject({
      worked: 1,
    });
  });

  it('can always be stored and read back', () => {
    const events = fc.array(
      fc.tuple(
        fc.integer({ min: 1, max: 4 }),
        fc.constantFrom<PracticeEvent>('right', 'mistake', 'unit-slip', 'wrong', 'working-shown'),
      ),
    );
    fc.assert(
      fc.property(events, (list) => {
        const progress = after(...list);
        const read: unknown = JSON.parse(JSON.stringify(progress));
        expect(read).toEqual(progress);
        expect(isProgress(read)).toBe(true);
      }),
      { seed: 1 },
    );
  });
});

describe('isProgress', () => {
  const good = after([1, 'right'])[family]!;

  it.each([
    ['nothing', null],
    ['a text', 'right'],
    ['a list', [good]],
    ['an empty score', { [family]: {} }],
    ['no score', { [family]: null }],
    ['a broken count', { [family]: { ...good, worked: 1.5 } }],
    ['a negative count', { [family]: { ...good, later: -1 } }],
    ['a count as text', { [family]: { ...good, tries: '1' } }],
    ['more right than worked', { [family]: { ...good, atOnce: 2 } }],
    ['a number no problem has', { [family]: { ...good, seed: 0 } }],
  ])('refuses %s', (_, value) => {
    expect(isProgress(value)).toBe(false);
  });

  it('fails on nothing that JSON can hold', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => void isProgress(value)),
      { seed: 1 },
    );
  });
});
