import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { bench } from '../bench.svelte.ts';
import { ofChain, turnedChain, uprightChain } from './chains.ts';
import { ownLenses } from './gear.ts';

const settings = Object.keys(ownLenses).flatMap((lens) =>
  [4, 76].flatMap((extension) => [0, 2.8, 15].map((travel) => ({ lens, extension, travel }))),
);
const because = 'two ways to the same Gaussian optics';

describe.each(settings)('$lens on $extension mm, $travel mm out', ({ lens, extension, travel }) => {
  const set = () => {
    bench.read(`?lens=${lens}&extension=${extension}&focus-travel=${travel}`);
    const drawn = turnedChain(bench.named(...ofChain), bench.chosen('lens'));
    return { drawn, magnification: bench.number('magnification', undefined) };
  };

  it('is drawn as its numbers say: size and room turned round', () => {
    const { drawn, magnification } = set();
    const { solved } = drawn.positions;
    const room = bench.number('working-distance', undefined);
    bench.read('');
    if (magnification === undefined) {
      expect(solved.sharpPlane).not.toBe('in front');
      return;
    }
    expect(solved).toMatchObject({
      magnification: closeTo(magnification, { relative: 1e-9, because }),
      workingDistance: closeTo(room!, { absolute: 1e-7, because }),
    });
  });

  it('is as large the right way round, with the room that is said', () => {
    const { magnification } = set();
    const ring = bench.number('unreversed.extension', undefined);
    const given = bench.named(...ofChain);
    const slug = bench.chosen('lens');
    const room = bench.number('unreversed.working-distance', undefined);
    bench.read('');
    expect(ring === undefined).toBe(magnification === undefined);
    if (ring === undefined) return;
    expect(uprightChain(given, slug, ring).positions.solved).toMatchObject({
      magnification: closeTo(magnification!, { relative: 1e-9, because }),
      workingDistance: closeTo(room!, { absolute: 1e-7, because }),
    });
  });

  it('has no glass before what counts as its foremost part', () => {
    const { drawn } = set();
    bench.read('');
    const front = Math.max(...(drawn.glass ?? []).flatMap(({ surfaces }) => surfaces.map(({ vertex }) => vertex)), 0);
    // What stands out is given to a tenth of a millimetre.
    expect(front).toBeLessThanOrEqual(drawn.positions.foremost + 0.05);
  });
});
