import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { withPart, without } from './change.ts';
import { changeKit, keptKit } from './kept-kit.ts';
import { emptyKit, type NewPart } from './part.ts';

const name = 'ring-and-ruler.kit';
const ring: NewPart = { kind: 'ring', name: 'Ring', extension: 12, contacts: 'yes' };
let held: Map<string, string>;

beforeEach(() => {
  held = new Map();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, value: string) => held.set(key, value),
    removeItem: (key: string) => held.delete(key),
  });
});
afterEach(() => vi.unstubAllGlobals());

describe('a kept kit', () => {
  it('is read back as it was', () => {
    const { kit, isKept } = changeKit((now) => withPart(now, ring));
    expect(isKept).toBe(true);
    expect(keptKit.read()).toEqual({ value: kit });
  });

  it('is empty where none was kept', () => expect(keptKit.read()).toEqual({ value: emptyKit }));

  it('is changed as it is at that moment: what two tabs do is done to one kit', () => {
    changeKit((now) => withPart(now, ring));
    // Another tab, which has read nothing of the first since.
    const { kit } = changeKit((now) => withPart(now, { ...ring, name: 'Other' }));
    expect(kit.parts.map((part) => part.name)).toEqual(['Ring', 'Other']);
    expect(changeKit((now) => without(now, 'ring-1')).kit.parts.map((part) => part.name)).toEqual(['Other']);
  });

  it('says that it is not kept where the browser keeps nothing', () => {
    vi.stubGlobal('localStorage', {
      getItem: () => null,
      setItem: () => {
        throw new Error('full');
      },
    });
    const { kit, isKept } = changeKit((now) => withPart(now, ring));
    expect(kit.parts).toHaveLength(1);
    expect(isKept).toBe(false);
  });

  it.each([
    ['text that is no JSON', '{"kit":'],
    ['a kit of a later edition', JSON.stringify({ ...emptyKit, version: 99 })],
    ['a ring of no thickness', JSON.stringify(withPart(emptyKit, { ...ring, extension: 0 }))],
  ])('is put aside where it is %s, offered, and never lost', (_, text) => {
    held.set(name, text);
    expect(keptKit.read()).toMatchObject({
      value: emptyKit,
      notice: expect.stringMatching(/saved kit could not be read/),
    });
    expect(keptKit.unread()).toBe(text);
    changeKit((now) => withPart(now, ring));
    expect(keptKit.unread()).toBe(text);
    expect(keptKit.read().value.parts).toHaveLength(1);
    keptKit.forgetUnread();
    expect(keptKit.unread()).toBeUndefined();
    expect(keptKit.read().value.parts).toHaveLength(1);
  });
});
