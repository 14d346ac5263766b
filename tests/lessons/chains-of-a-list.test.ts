import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { assembleRig } from '#core/rig/assemble.ts';
import { solveRig } from '#core/rig/solve.ts';
import { readChain } from '#site/chain/chain-text.ts';
import { engineChain } from '#site/chain/chain.ts';
import { kitOf } from '#site/kit/change.ts';
import type { NewPart } from '#site/kit/part.ts';
import { searchedParts } from '#site/kit/searched-parts.ts';
import type { KitSlug, WishSlug } from '#site/state/kits.ts';
import { ownParts, type OwnParts } from '#site/state/own-parts.svelte.ts';
import { bench } from '#lessons/choosing-kit/bench.svelte.ts';
import { benchLink, planLink } from '#lessons/choosing-kit/figures/chain-links.ts';
import { framesOf } from '#lessons/choosing-kit/figures/frames-of-row.ts';
import { lackInWords, ranking } from '#lessons/choosing-kit/figures/ranking.ts';
import { rowOf } from '#lessons/choosing-kit/figures/row-of.ts';
import { rangesOfRow } from '#lessons/choosing-kit/figures/row-ranges.ts';
import { ofAsked, search } from '#lessons/choosing-kit/figures/searches.ts';
import { bench as planning } from '#lessons/planning-a-picture/bench.svelte.ts';
import { chains } from '#lessons/planning-a-picture/figures/chains.ts';
import { listLink } from '#lessons/planning-a-picture/figures/list-link.ts';
import { ownReader } from '#lessons/planning-a-picture/figures/own-reader.ts';

beforeAll(async () => {
  chains.here = await import('#lessons/planning-a-picture/figures/planned-chain.ts');
  ownReader.here = (await import('#site/chain/own-in-text.ts')).readOwn;
});

afterEach(() => {
  bench.read('');
  planning.read('');
  ownParts.found = undefined;
});

const asked = () => bench.named(...ofAsked);
const chosen = (kit: KitSlug = 'bag') => ({
  kit,
  subject: bench.chosen('subject'),
  sensor: bench.chosen('sensor'),
  isByFlash: bench.chosen('light') === 'flash',
  isStack: bench.chosen('as') === 'stack',
});

/** A camera of another mount than the crate's, a lens by its marks, and what goes with it. */
const own: readonly NewPart[] = [
  { kind: 'camera', name: 'Mine', 'sensor-width': 22.3, 'sensor-height': 14.9, 'register-distance': 18, mount: 'Z' },
  {
    kind: 'lens',
    name: 'My 85',
    mount: 'Z',
    'focal-length': 85,
    'max-aperture': 1.8,
    'smallest-aperture': 22,
    'focus-distance': 800,
    focusing: 'whole',
    iris: 'camera',
  },
  { kind: 'ring', name: 'my thick ring', mount: 'Z', extension: 21, contacts: 'yes' },
  { kind: 'close-up-lens', name: 'my +3', 'close-up-power': 3, glass: 'single' },
];

function keepOwn() {
  const found = searchedParts(kitOf(...own), 7001);
  expect(typeof found).toBe('object');
  ownParts.found = found as OwnParts;
}

/** Chains of a search that show something, as links take them. */
function setChains(kit: KitSlug, added: readonly WishSlug[] = [], every = 1) {
  const found = search(kit, added, asked(), bench.chosen('as'));
  return Array.from({ length: Math.ceil(found.count / every) }, (_, at) => every * at).flatMap((at) => {
    const judged = found.judgementOf(at);
    const { ids, parts, solved } = found.chain(at);
    return judged.magnification > 0 && judged.fNumber > 0 ? [{ ids, parts, solved, ...judged }] : [];
  });
}

/** Behind a second lens the same size can come twice on one focus ring, from two distances; the plan, which is asked for a size, has either. */
const hasTwoSettings = ({ ids }: { readonly ids: readonly string[] }) => ids.includes('coupling-ring');

describe('a chain of the list, planned', () => {
  it.each([
    ['bag', ''],
    ['bag', '?subject=stamp'],
    ['bag', '?subject=flower-detail&as=stack'],
    ['crate', '?subject=hoverfly-head&as=stack&least.frame-fill=0.1'],
    ['bag', '?subject-width=50&subject-depth=0.5&nearest.working-distance=60&sensor-width=30'],
  ] as const)('of the %s has its parts, size, f-number and subject in the plan, at %j', (kit, address) => {
    bench.read(address);
    const found = search(kit, [], asked(), bench.chosen('as'));
    const set = setChains(kit, [], kit === 'bag' ? 1 : 61).filter(({ ids }) => ids.length > 0);
    expect(set.length).toBeGreaterThan(5);
    expect(found.count).toBeGreaterThan(5);
    let compared = 0;
    for (const chain of set) {
      const link = planLink(chain, asked(), chosen(kit))!;
      planning.read(link.slice(link.indexOf('?')));
      // Less than the plan's least share of the picture is none of its pictures.
      const fill = (chain.magnification * asked().subjectWidth) / asked().sensorWidth;
      if (fill < planning.range('frame-fill').least || fill > 1) continue;
      expect(planning.notices, link).toEqual([]);
      expect(planning.number('sensor-width')).toBe(bench.number('sensor-width'));
      expect(planning.number('subject-depth')).toBe(bench.number('subject-depth'));
      expect(planning.chosen('subject')).toBe(bench.chosen('subject') ?? 'own');
      expect(planning.number('f-number') / chain.fNumber).toBeCloseTo(1, 4);
      if (hasTwoSettings(chain) || !(chain.room > 0)) continue;
      compared++;
      expect(planning.number('chain.magnification') / chain.magnification, link).toBeCloseTo(1, 6);
      expect(planning.number('working-distance') / chain.room, link).toBeCloseTo(1, 6);
      const frames = framesOf(chain.solved, asked());
      if (frames !== undefined && planning.number('depth-of-field') < Infinity)
        expect(planning.number('frame-count'), link).toBe(frames);
      // Where something else stands against it first no iris was set.
      if (chain.effectiveFNumber > 0)
        expect(planning.number('effective-f-number') / chain.effectiveFNumber, link).toBeCloseTo(1, 6);
    }
    expect(compared).toBeGreaterThan(2);
  });

  it('is none that shows no picture', () => {
    const set = { ids: ['camera', 'lens-90'], parts: [], magnification: 0, fNumber: 8 };
    expect(planLink(set, asked(), chosen())).toBeUndefined();
  });
});

describe('a chain of the list, on the bench', () => {
  it.each([
    ['bag', ''],
    ['bag', '?subject=water-drop&light=flash&as=stack'],
    ['bag', '?subject=stamp&sensor=body-23'],
    ['crate', '?subject=jumping-spider&as=stack'],
    ['crate', '?subject=flower-detail'],
  ] as const)('of the %s has the size, room and cone there that the list says, every row at %j', (kit, address) => {
    bench.read(address);
    const set = setChains(kit);
    expect(set.length).toBeGreaterThan(100);
    const seen = new Set<number>();
    for (const chain of set) {
      const link = benchLink(chain, asked(), chosen(kit))!;
      const { chain: read } = readChain(link.slice(link.indexOf('=') + 1));
      const solved = solveRig(assembleRig(engineChain(read).parts));
      if (solved.sharpPlane !== 'in front' && solved.sharpPlane !== 'inside') throw new Error(link);
      expect(Math.abs(solved.magnification / chain.magnification - 1), link).toBeLessThan(1e-6);
      expect(Math.abs(solved.workingDistance - chain.room), link).toBeLessThan(
        1e-6 * Math.max(1, Math.abs(chain.room)),
      );
      seen.add(chain.ids.filter((id) => id.startsWith('close-up')).length);
      if (chain.effectiveFNumber === 0) continue;
      expect(Math.abs(solved.effectiveFNumber / chain.effectiveFNumber - 1), link).toBeLessThan(1e-6);
    }
    // One and two close-up lenses, one before the other, among them.
    expect([...seen]).toEqual(expect.arrayContaining([0, 1, 2]));
  });

  it('is there part by part as it was set, rings, close-up lenses, converters and lenses turned round', () => {
    bench.read('?subject=jumping-spider&as=stack');
    const found = search('crate', ['second-ring-36'], asked(), 'stack');
    for (let chain = 0; chain < found.count; chain += 97) {
      const { ids, parts } = found.chain(chain);
      const link = benchLink({ ids, parts, ...found.judgementOf(chain) }, asked(), chosen('crate'))!;
      const { chain: read, notices } = readChain(link.slice(link.indexOf('=') + 1));
      expect(notices, link).toEqual([]);
      expect(read.map(({ thing }) => thing.slug)).toEqual([
        'body-36',
        ...ids.slice(1).map((id) => id.replace(/^second-/, '')),
      ]);
      for (const [index, part] of parts.entries()) {
        if (part.part !== 'lens') continue;
        const { turned = false, focus, fNumber } = read[index]!;
        expect(turned).toBe(part.reversed);
        expect(focus).toBeCloseTo(part.focusMagnification, 5);
        expect(fNumber! / part.fNumber).toBeCloseTo(1, 5);
      }
    }
  });

  it('is none on a camera by its numbers', () => {
    const set = { ids: ['camera', 'lens-90'], parts: [], magnification: 1, fNumber: 8 };
    expect(benchLink(set, asked(), { ...chosen(), sensor: undefined })).toBeUndefined();
  });
});

describe('a row of the list', () => {
  it('says of a stack how many frames it takes beside the stops of one, of a single frame nothing', () => {
    const rowAt = (address: string, place: number) => {
      bench.read(address);
      const found = search('bag', [], asked(), bench.chosen('as'));
      const chain = ranking(found)[place - 1]!;
      const built = found.chain(chain);
      const reason = lackInWords(found, chain, asked(), 0);
      const judged = found.judgementOf(chain);
      return rowOf({ built, name: '', reason, numbers: [], judged }, undefined, asked(), chosen());
    };
    expect(rowAt('?subject=water-drop&light=flash&as=stack', 1).reason).toMatch(/^6\.9\sstops in hand, 96 frames$/);
    expect(rowAt('?subject=water-drop&light=flash&as=stack', 160).reason).not.toMatch(/frame/);
    expect(rowAt('', 1).reason).toMatch(/^2\sstops in hand$/);
  });
});

describe('the spider of the bag', () => {
  it('is reached by no chain, by a few with another ring and by many with a converter, as lesson and stage say', () => {
    const spider = { subject: 'jumping-spider', as: 'stack' };
    const opened = (part: string) => bench.atStep({ ...spider, part })['gain.chain-count'];
    const none = bench.atStep(spider);
    expect(none['suited.chain-count']).toBe(0);
    for (const others of ['too-large', 'too-near', 'too-shallow', 'too-soft', 'too-dark'])
      expect(none[`${others}.chain-count`]).toBe(0);
    expect(opened('second-ring-36')).toBe(5);
    expect(opened('converter-2')).toBe(113);
  });
});

describe('a chain of the reader’s own kit', () => {
  it('is spelled out for plan and bench, which read it without the kit', () => {
    keepOwn();
    bench.read('?sensor-width=22.3&subject-width=40');
    const set = setChains('own');
    expect(set.length).toBeGreaterThan(2);
    const links = set.map((chain) => ({
      chain,
      plan: planLink(chain, asked(), chosen('own'))!,
      onBench: benchLink(chain, asked(), chosen('own'))!,
    }));
    ownParts.found = undefined;
    for (const { chain, plan, onBench } of links) {
      const { chain: read, notices } = readChain(decodeURIComponent(onBench.slice(onBench.indexOf('=') + 1)));
      expect(notices, onBench).toEqual([]);
      expect(read.map(({ thing }) => thing.name)).toEqual([
        'Mine',
        ...chain.ids.slice(1).map((id) => own[Number(id.slice(id.lastIndexOf('-') + 1))]!.name),
      ]);
      planning.read(plan.slice(plan.indexOf('?')));
      expect(planning.notices, plan).toEqual([]);
      if (chain.room <= 0) continue;
      expect(planning.number('chain.magnification') / chain.magnification, plan).toBeCloseTo(1, 4);
      expect(planning.number('working-distance') / chain.room, plan).toBeCloseTo(1, 3);
    }
  });

  it('has the ranges of what is assumed of its lens, and the usual lens lies within them', () => {
    keepOwn();
    bench.read('?sensor-width=22.3&subject-width=40');
    const [ring] = setChains('own').filter(({ ids }) => ids.join() === 'camera,my-ring-2,my-lens-1');
    const ranges = rangesOfRow(ring!.ids, 'own', [], asked(), 'one')!;
    expect(ranges.because).toEqual(['My 85: P, h, HH′, length and m₀ of this lens are assumed.']);
    const [least, most] = ranges['working-distance']!.match(/[\d.]+/g)!.map(Number);
    expect(least).toBeLessThan(ring!.room);
    expect(most).toBeGreaterThan(ring!.room);
  });

  it('has none where everything about its lenses is known', () => {
    expect(rangesOfRow(['camera', 'lens-90'], 'bag', [], asked(), 'one')).toBeUndefined();
  });
});

describe('the way back from a plan to the list', () => {
  it.each(['', '?subject=butterfly&frame-fill=0.6&f-number=16', '?subject=stamp&sensor=body-23', '?subject=soap-film'])(
    'asks there for what is planned, at %j',
    (address) => {
      planning.read(address);
      const link = listLink();
      bench.read(link.slice(link.indexOf('?')));
      expect(bench.notices, link).toEqual([]);
      for (const name of ['subject-width', 'subject-depth', 'subject-speed', 'sensor-width', 'iso'] as const)
        expect(bench.number(name)).toBe(planning.number(name));
      expect(bench.number('nearest.working-distance')).toBe(planning.number('flight-distance'));
      expect(bench.number('least.frame-fill')).toBe(planning.number('frame-fill'));
    },
  );
});
