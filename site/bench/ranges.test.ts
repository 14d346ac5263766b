import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import { readChain } from '#site/chain/chain-text.ts';
import { ownThing } from '#site/chain/own-thing.ts';
import { crateKit } from '#site/kit/crate-kit.ts';
import { builtChain } from './answers.ts';
import { bestOf } from './best.ts';
import Compared from './Compared.svelte';
import { usualConditions } from './conditions.ts';
import { bestRange, rangesOf, type Ranges } from './ranges.ts';
import { spanText } from './span-text.ts';

/** A zoom of which its owner knows what is printed on it. */
const kit =
  'body-36,my-lens:focal-length=55:max-aperture=5.6:smallest-aperture=36:focus-distance=250:focus-magnification=0.36:focusing=inside:iris=camera:register-distance=44';

function found(text: string) {
  const { chain, notices } = readChain(text);
  expect(notices).toEqual([]);
  const built = builtChain(chain, usualConditions);
  if (built.kind !== 'built') throw new Error(built.why);
  const best = bestOf(chain, built, usualConditions);
  return { chain, built, best: best ?? NaN };
}

describe('what leans on what is assumed of a lens', () => {
  it('has a range, the best f-number too', () => {
    const { chain, built, best } = found(kit);
    const { spans, because } = rangesOf(chain, built, usualConditions);
    expect(because).toHaveLength(1);
    expect(spans['effective-f-number']!.least).toBeLessThan(spans['effective-f-number']!.most);
    const span = bestRange(chain, usualConditions, best, bestOf)!;
    expect(span.least).toBeLessThan(span.most);
    expect(span.least).toBeLessThanOrEqual(best);
    expect(span.most).toBeGreaterThanOrEqual(best);
  });

  it('has none where everything of it is known', () => {
    const { chain, built, best } = found('body-36,ring-24,lens-50');
    expect(rangesOf(chain, built, usualConditions)).toEqual({ spans: {}, because: [] });
    expect(bestRange(chain, usualConditions, best, bestOf)).toBeUndefined();
  });
});

describe('a lens turned round', () => {
  const chainOf = (lens: string) => `body-36,my-ring:extension=4:contacts=no,${lens}:turned`;
  /** The crate's own 28 mm, as a kit that is a copy of the crate has it. */
  const copy = crateKit().parts.find(({ name }) => name.startsWith('28 mm'))!;

  it('stands in a copy of the crate as it stands in the crate', () => {
    const ofCrate = found(chainOf('lens-28'));
    const thing = ownThing(copy, crateKit())!;
    const chain = ofCrate.chain.map((link, at) => (at === 2 ? { ...link, thing } : link));
    const built = builtChain(chain, usualConditions);
    if (built.kind !== 'built') throw new Error(built.why);
    const room = 'working-distance';
    expect(built.answers[room]).toBeCloseTo(ofCrate.built.answers[room]!, 1);
    expect(rangesOf(chain, built, usualConditions)).toEqual({ spans: {}, because: [] });
  });

  it('has the part behind its mount among what is assumed, and less room by it', () => {
    const lens =
      'my-lens:focal-length=58:max-aperture=1.4:focus-magnification=0.15:focusing=whole:iris=lens:register-distance=44:barrel-length=40:principal-separation=-4:pupil-magnification=1';
    const { chain, built } = found(chainOf(lens));
    const { spans, because } = rangesOf(chain, built, usualConditions);
    expect(because).toEqual([expect.stringMatching(/: the part behind the mount of this lens is assumed\.$/)]);
    const { usual, least, most } = spans['working-distance']!;
    expect([most - usual!, usual! - least]).toEqual([expect.closeTo(5, 8), expect.closeTo(10, 8)]);
    expect(spans.magnification).toBeUndefined();
    const said = found(chainOf(`${lens}:rear-protrusion=10`));
    expect(rangesOf(said.chain, said.built, usualConditions).because).toEqual([]);
    expect(said.built.answers['working-distance']).toBeCloseTo(usual! - 5, 8);
    const upright = found(`body-36,my-ring:extension=4:contacts=no,${lens}`);
    expect(rangesOf(upright.chain, upright.built, usualConditions).because).toEqual([]);
  });
});

describe('two chains compared', () => {
  it('show the range of each number that has one', () => {
    const [one, other] = [found(kit), found('body-36,ring-24,lens-50')];
    const ranges = [one, other].map(({ chain, built }) => rangesOf(chain, built, usualConditions)) as [Ranges, Ranges];
    const { body } = render(Compared, {
      props: { first: one.built.answers, second: other.built.answers, ranges },
    });
    const row = /<tr data-quantity="working-distance"[^]*?<\/tr>/.exec(body)![0];
    expect(row.match(/class="range/g)).toHaveLength(1);
    expect(row).toContain(spanText('working-distance', ranges[0].spans['working-distance']!));
  });
});
