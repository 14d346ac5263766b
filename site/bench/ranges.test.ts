import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import { readChain } from '#site/chain/chain-text.ts';
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
