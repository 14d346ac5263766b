import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { isTheme, theme } from './preferences.ts';

/** A stand-in for the browser's storage that holds one text. */
function withStorage(text: string | null) {
  const written: string[] = [];
  vi.stubGlobal('localStorage', { getItem: () => text, setItem: (_: string, value: string) => written.push(value) });
  return written;
}

describe('a stored preference', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('is read back as it was written', () => {
    const written = withStorage(null);
    theme.write('dark');
    withStorage(written[0]!);
    expect(theme.read()).toEqual({ value: 'dark' });
  });

  it('is the default in silence where nothing was stored', () => {
    withStorage(null);
    expect(theme.read()).toEqual({ value: 'system' });
  });

  it('is the default where storage is forbidden', () => {
    vi.stubGlobal('localStorage', {
      getItem: () => {
        throw new Error('forbidden');
      },
    });
    expect(theme.read()).toEqual({ value: 'system' });
  });

  it('says what it is, what can be done and keeps the default for whatever else lies there', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        withStorage(text);
        const { value, notice } = theme.read();
        expect(isTheme(value)).toBe(true);
        if (notice !== undefined) expect(notice).toMatch(/choice of colours.*system, light or dark/);
        else expect(JSON.parse(text)).toBe(value);
      }),
    );
  });

  it('puts aside what it cannot read before something else takes its place', () => {
    const held = new Map([['ring-and-ruler.theme', '"sepia"']]);
    vi.stubGlobal('localStorage', {
      getItem: (name: string) => held.get(name) ?? null,
      setItem: (name: string, value: string) => held.set(name, value),
    });
    theme.write('dark');
    expect(held.get('ring-and-ruler.theme')).toBe('"dark"');
    expect(held.get('ring-and-ruler.theme.put-aside')).toBe('"sepia"');
    theme.write('light');
    expect(held.get('ring-and-ruler.theme.put-aside')).toBe('"sepia"');
  });

  it('is changed from what is stored at that moment, not from what was read before', () => {
    let text: string | null = null;
    vi.stubGlobal('localStorage', { getItem: () => text, setItem: (_: string, value: string) => (text = value) });
    theme.read();
    text = '"dark"';
    const seen: string[] = [];
    expect(theme.change((now) => (seen.push(now), 'light'))).toBe('light');
    expect(seen).toEqual(['dark']);
    expect(text).toBe('"light"');
  });
});
