import { describe, expect, it } from 'vitest';
import { readChain, writeChain } from '#site/chain/chain-text.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { builtChain } from './answers.ts';
import { compared } from './compared.ts';
import { usualConditions } from './conditions.ts';
import { demonstration, withoutQuestions } from './demonstration.ts';
import { matchedTo, measured } from './match.ts';
import { rangesOf } from './ranges.ts';
import { differenceText, reachWords } from './compared-words.ts';

const chain = (text: string) => readChain(text).chain;
const built = (text: string) => {
  const found = builtChain(chain(text), usualConditions);
  if (found.kind !== 'built') throw new Error(found.why);
  return found;
};
const exactly = { relative: 1e-6, because: 'found by halving, and held to it' };

describe('a chain set to be like another', () => {
  it('is focused to the same magnification', () => {
    const found = matchedTo(chain('body-36,lens-60'), 'magnification', 0.63);
    if (found.kind !== 'matched') throw new Error(found.kind);
    expect(measured(found.chain, 'magnification')).toEqual(closeTo(0.63, exactly));
  });

  it('is drawn out by its bellows where its lens does not reach that far', () => {
    const found = matchedTo(chain('body-36,bellows,lens-100:far'), 'magnification', 1.2);
    if (found.kind !== 'matched') throw new Error(found.kind);
    expect(found.chain[1]!.extension).toEqual(closeTo(120, exactly));
    expect(found.chain[2]!.focus).toBe(0);
  });

  it('is set to the same room in front', () => {
    const found = matchedTo(chain('body-36,lens-90'), 'working-distance', 250);
    if (found.kind !== 'matched') throw new Error(found.kind);
    expect(measured(found.chain, 'working-distance')).toEqual(closeTo(250, exactly));
  });

  it('says how far it goes where it does not go so far', () => {
    // 0.15 by itself, and 24/50 from the ring.
    expect(matchedTo(chain('body-36,ring-24,lens-50'), 'magnification', 2)).toEqual({
      kind: 'out of reach',
      least: closeTo(0.48, exactly),
      most: closeTo(0.63, exactly),
    });
  });

  it('goes as far as infinity, and to all that is on the way there', () => {
    for (const [text, value] of [
      ['body-36,lens-60', 0.02],
      ['body-36,lens-18', 0.001],
    ] as const) {
      const found = matchedTo(chain(text), 'magnification', value);
      if (found.kind !== 'matched') throw new Error(found.kind);
      expect(measured(found.chain, 'magnification')).toEqual(closeTo(value, exactly));
    }
    const far = matchedTo(chain('body-36,lens-100'), 'working-distance', 80_000);
    if (far.kind !== 'matched') throw new Error(far.kind);
    expect(measured(far.chain, 'working-distance')).toEqual(closeTo(80_000, exactly));
    const close = matchedTo(chain('body-36,lens-18'), 'magnification', 1);
    expect(close).toMatchObject({ kind: 'out of reach', least: 0 });
    const near = matchedTo(chain('body-36,lens-100'), 'working-distance', 10);
    expect(near).toMatchObject({ kind: 'out of reach', most: Infinity });
    if (close.kind !== 'out of reach' || near.kind !== 'out of reach') throw new Error('both are out of reach');
    expect(reachWords('magnification', close)).toBe('up to 0.06×');
    expect(reachWords('working-distance', near)).toMatch(/^from 1\.\d+\u202fm on$/);
  });

  it('is left alone where nothing in it can be set', () => {
    expect(matchedTo(chain('body-36,reversing-ring,lens-28:turned'), 'magnification', 1).kind).toBe('fixed');
  });

  it('is left as it is where it is so already', () => {
    const before = chain('body-36,ring-24,lens-50:m0.1');
    const found = matchedTo(before, 'magnification', measured(before, 'magnification')!);
    expect(found.kind === 'matched' && writeChain(found.chain)).toBe(writeChain(before));
  });
});

describe('two chains compared', () => {
  const one = built('body-36,ring-24,lens-50').answers;
  const other = built('body-36,ring-36,lens-50').answers;

  it('have what differs before what prints alike, and all of it', () => {
    const rows = compared(one, other);
    const firstAlike = rows.findIndex(({ isAlike }) => isAlike);
    expect(firstAlike).toBeGreaterThan(5);
    expect(rows.slice(firstAlike).every(({ isAlike }) => isAlike)).toBe(true);
    expect(rows.map(({ name }) => name).sort()).toEqual(Object.keys({ ...one, ...other }).sort());
  });

  it.each([
    ['light-loss', 2.27, 2.24, '−0.03 stops'],
    ['magnification', 0.5, 1, '× 2'],
    ['principal-separation', -4, 13.5, '+17.5\u202fmm'],
    ['depth-of-field', 3, Infinity, 'differs'],
    ['field-width', 36, 36, 'alike'],
  ] as const)('differ in %s by what a reader can use', (name, first, second, words) => {
    expect(differenceText(name, first, second)).toBe(words);
  });

  it('have what only one of them has before everything', () => {
    const { magnification: _, ...without } = other;
    expect(compared(one, without)[0]!.name).toBe('magnification');
  });
});

describe('questions about chains', () => {
  it('ask of two chains only what they have not alike', () => {
    const [first, second] = [built('body-36,ring-24,lens-50'), built('body-36,ring-24,lens-50:f16')];
    const asked = demonstration([first, second]).map(({ withheld }) => withheld[0]);
    expect(asked).toContain('depth-of-field');
    expect(asked).not.toContain('magnification');
    expect(demonstration([first]).map(({ withheld }) => withheld[0])).toContain('magnification');
  });

  it('are answered with a range where a lens leaves one open, and say why', () => {
    const lens = 'my-lens:name=Fifty:focal-length=50:focus-magnification=0.15:focusing=whole:register-distance=44';
    const one = chain(`body-36,ring-24,${lens}:max-aperture=1.8:iris=camera`);
    const found = builtChain(one, usualConditions);
    if (found.kind !== 'built') throw new Error(found.why);
    const [size, , room] = demonstration([found], [rangesOf(one, found, usualConditions)]);
    expect(size!.caption).toBe('0.63× as large on the sensor.');
    expect(room!.caption).toMatch(/^w = \d.*mm \(.* to .*mm\)\. Fifty: P, .* of this lens are assumed\.$/);
  });

  it('are none of two alike, and of one without a picture', () => {
    const chain = built('body-36,ring-24,lens-50');
    const blind = { ...chain, answers: {} };
    expect(demonstration([chain, chain])).toEqual([]);
    expect(withoutQuestions([chain, chain])).toBe('The two chains are alike. Change one.');
    expect(withoutQuestions([chain, blind])).toBe('There is no picture to ask about.');
    expect(withoutQuestions([])).toBe('There is no picture to ask about.');
  });
});
