import { describe, expect, it, vi } from 'vitest';
import { Undoable } from './undoable.svelte.ts';

describe('what a page is set to', () => {
  it('goes back over what was done, and says so; what was only set in between goes with it', () => {
    const told = vi.fn();
    const page = new Undoable(1, told);
    page.set(2, 'Two now.');
    page.set(3);
    expect([page.now, page.said, page.canUndo]).toEqual([3, 'Two now.', true]);
    page.undo();
    expect([page.now, page.said, page.canUndo]).toEqual([1, 'As it was before.', false]);
    page.undo();
    expect(page.now).toBe(1);
    expect(told).toHaveBeenCalledTimes(3);
  });

  it('keeps the last twenty steps', () => {
    const page = new Undoable(0, () => undefined);
    for (let step = 1; step <= 30; step++) page.set(step, `${step}.`);
    for (let back = 0; back < 30; back++) page.undo();
    expect(page.now).toBe(10);
  });

  it('says what an address asks in vain until something is set', () => {
    const page = new Undoable(0, () => undefined);
    page.set(1, 'One now.');
    page.open(5, ['“x” is none.']);
    expect([page.now, page.said, page.canUndo, page.notices]).toEqual([5, '', false, ['“x” is none.']]);
    page.set(6);
    expect(page.notices).toEqual([]);
  });
});
