import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readChain, writeChain } from '#site/chain/chain-text.ts';
import { firstChain } from '#site/chain/chain.ts';
import type { OwnParts } from '#site/state/own-parts.svelte.ts';
import { ownCamera as camera, ownFifty as lens } from '#tests/support/own-parts.ts';
import { kitOf } from './change.ts';
import type { NewPart } from './part.ts';
import { searchedParts } from './searched-parts.ts';
import { namesApart, nameInKit } from './told-apart.ts';

const converter = (length: number, more: Partial<NewPart> = {}): NewPart => ({
  kind: 'converter',
  name: '×2 converter',
  'converter-factor': 2,
  'converter-length': length,
  contacts: 'yes',
  ...more,
});
const ring = (name: string, extension: number): NewPart => ({ kind: 'ring', name, extension, contacts: 'yes' });
const plain = (parts: readonly NewPart[]) => namesApart(parts).map((name) => name.replaceAll('\u202f', ' '));

describe('parts of one name in a chain', () => {
  const twins = kitOf(camera, converter(40), converter(22), lens, { ...lens, 'max-aperture': 2.8 });
  const told = ['×2 converter, 40\u202fmm', '×2 converter, 22\u202fmm', 'Fifty, f/1.8', 'Fifty, f/2.8'];

  it('are told apart where chains are searched, and as what they are put together of', () => {
    const { names, things } = searchedParts(twins, 1) as OwnParts;
    expect(Object.values(names)).toEqual(['Mine', ...told]);
    expect(Object.values(things).map(({ name }) => name)).toEqual(['Mine', ...told]);
  });

  it('are told apart by an address, which carries the name that their owner gave them', () => {
    const { things } = searchedParts(twins, 1) as OwnParts;
    const chain = [
      ...firstChain().slice(0, 1),
      ...Object.values(things)
        .slice(1)
        .map((thing) => ({ thing })),
    ];
    const text = writeChain(chain);
    expect(text.match(/name=×2_converter:/g)).toHaveLength(2);
    const { chain: read, notices } = readChain(text);
    expect(notices).toEqual([]);
    expect(read.slice(1).map(({ thing }) => thing.name)).toEqual(told);
    expect(writeChain(read)).toBe(text);
  });
});

describe('parts of one name', () => {
  it('keep the name that no other has', () => {
    expect(plain([converter(40), ring('thin one', 12)])).toEqual(['×2 converter', 'thin one']);
  });

  it('get the number in which they differ', () => {
    expect(plain([converter(40), converter(22)])).toEqual(['×2 converter, 40 mm', '×2 converter, 22 mm']);
    expect(plain([ring('ring', 12), ring('Ring ', 36)])).toEqual(['ring, 12 mm', 'Ring, 36 mm']);
  });

  it('get as many as it takes, and words where a number is not what differs', () => {
    const three = [converter(40), converter(22), converter(22, { contacts: 'no' })];
    expect(plain(three)).toEqual([
      '×2 converter, 40 mm, contacts: passes them on',
      '×2 converter, 22 mm, contacts: passes them on',
      '×2 converter, 22 mm, contacts: has none',
    ]);
  });

  it('say what they are where those are of two kinds', () => {
    expect(plain([ring('old one', 40), converter(40, { name: 'old one' })])).toEqual([
      'old one, extension ring',
      'old one, converter',
    ]);
  });

  it('are counted where they are alike in everything', () => {
    expect(plain([ring('12 mm ring', 12), ring('12 mm ring', 12), ring('12 mm ring, 2', 12)])).toEqual([
      '12 mm ring',
      '12 mm ring, 2',
      '12 mm ring, 2, 2',
    ]);
  });

  it('are never called alike, whatever is typed', () => {
    const names = fc.constantFrom('a', 'A', 'a, 2', 'a, 12 mm', ' a', '');
    const parts = fc.array(fc.tuple(names, fc.constantFrom(12, 24)), { maxLength: 12 });
    fc.assert(
      fc.property(parts, (all) => {
        const kit = kitOf(...all.map(([name, extension]) => ring(name, extension)));
        const told = kit.parts.map((part) => nameInKit(kit, part).trim().toLowerCase());
        expect(new Set(told).size).toBe(told.length);
      }),
      { seed: 21, numRuns: 500 },
    );
  });
});
