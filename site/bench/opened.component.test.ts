import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { writeChain } from '#site/chain/chain-text.ts';
import { ownCircle } from '#site/state/kept-circle.ts';
import { opened } from './opened.ts';
import { placedChain } from './placed.ts';
import { firstState } from './state.ts';

// Other tests share what this page keeps.
beforeEach(() => ownCircle.write(null));
afterEach(() => ownCircle.write(null));

describe('what an address asks of the bench', () => {
  it('is the usual chain where it says nothing', async () => {
    expect(await opened('')).toEqual({ state: firstState(), notices: [] });
  });

  it('is read with parts that are spelled out, and what cannot be used is named', async () => {
    const { state, notices } = await opened(
      '?chain=body-36,my-ring:extension=13:contacts=no,lens-50,sofa&wavelength=red',
    );
    expect(writeChain(state.chain)).toBe('body-36,my-ring:name=extension_ring:extension=13:contacts=no,lens-50');
    expect(notices).toHaveLength(2);
  });

  it('brings along what a second chain takes, and it is set like the first', async () => {
    const { state, besides } = await opened(
      '?chain=body-36,ring-24,lens-50&beside=body-36,lens-60&equal=magnification',
    );
    const second = besides!.besideOf(state.beside!, state.equal, placedChain(state.chain));
    expect(second.placed).toMatchObject({ kind: 'built' });
    expect(second.words).toBe('The second chain is set to 0.63×, as the first.');
    const far = besides!.besideOf(
      (await opened('?chain=body-36,lens-50')).state.chain,
      'magnification',
      placedChain(state.chain),
    );
    expect(far.words).toMatch(/^The second chain does not reach 0\.63×: it goes up to 0\.15×\.$/);
    expect((await opened('?chain=body-36,lens-50')).besides).toBeUndefined();
  });

  it('leans on the reader’s own circle of confusion, unless it says one itself', async () => {
    ownCircle.write(0.012);
    expect((await opened('')).state.conditions['circle-of-confusion']).toBe(0.012);
    expect((await opened('?circle-of-confusion=0.02')).state.conditions['circle-of-confusion']).toBe(0.02);
  });
});
