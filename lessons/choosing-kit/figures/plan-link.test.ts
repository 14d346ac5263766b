import { afterEach, describe, expect, it } from 'vitest';
import type { AnyBench } from '#site/controls/workbench/workbench.ts';
import { readChainBy } from '#site/chain/chain-from-text.ts';
import { everyLessonFile } from '#tests/support/lessons.ts';
import { bench } from '../bench.svelte.ts';
import { benchLink, planLink } from './plan-link.ts';
import { ofAsked, search } from './searches.ts';

const benches = await everyLessonFile('bench.svelte.ts');
const planning = benches.find(({ slug }) => slug === 'planning-a-picture')!.exports['bench'] as AnyBench;

afterEach(() => {
  bench.read('');
  planning.read('');
});

const asked = () => bench.named(...ofAsked);
const chosen = () => ({
  subject: bench.chosen('subject'),
  sensor: bench.chosen('sensor'),
  isByFlash: bench.chosen('light') === 'flash',
});

describe('a chain of the list, planned', () => {
  it.each([
    '',
    '?subject=stamp',
    '?subject=flower-detail&as=stack',
    '?subject=hoverfly-head&as=stack&least.frame-fill=0.1',
    '?subject-width=50&subject-depth=0.5&nearest.working-distance=60&sensor-width=30',
  ])('has its size, f-number and subject in the plan, at %j', (address) => {
    bench.read(address);
    const found = search('bag', [], asked(), bench.chosen('as'));
    const planned = Array.from(found.suited).flatMap((chain) => {
      const judged = found.judgementOf(chain);
      const link = planLink({ ids: found.chain(chain).ids, ...judged }, asked(), chosen());
      return link === undefined ? [] : [{ judged, link }];
    });
    expect(planned.length).toBeGreaterThan(0);
    for (const { judged, link } of planned) {
      planning.read(link.slice(link.indexOf('?')));
      expect(planning.notices).toEqual([]);
      expect(planning.number('magnification') / judged.magnification).toBeCloseTo(1, 4);
      expect(planning.number('f-number') / judged.fNumber).toBeCloseTo(1, 4);
      expect(planning.number('sensor-width')).toBe(bench.number('sensor-width'));
      expect(planning.number('circle-of-confusion')).toBe(bench.number('circle-of-confusion'));
      expect(planning.number('subject-depth')).toBe(bench.number('subject-depth'));
      expect(planning.chosen('subject')).toBe(bench.chosen('subject') ?? 'own');
      expect(link).toContain(`lens=${planning.chosen('lens')}`);
    }
  });

  it('is none with anything before the lens or behind it but rings', () => {
    const set = { magnification: 1, fNumber: 8 };
    const link = (...ids: readonly string[]) => planLink({ ids: ['camera', ...ids], ...set }, asked(), chosen());
    expect(link('ring-12', 'second-ring-36', 'lens-90')).toContain('lens=lens-90');
    expect(link('lens-90', 'close-up-4')).toBeUndefined();
    expect(link('converter-2', 'lens-90')).toBeUndefined();
    expect(link('reversing-ring', 'lens-50')).toBeUndefined();
    expect(link('lens-90', 'coupling-ring', 'lens-50')).toBeUndefined();
    expect(planLink({ ids: ['camera', 'lens-90'], magnification: 0, fNumber: 8 }, asked(), chosen())).toBeUndefined();
  });
});

describe('a chain of the list, on the bench', () => {
  it('is there part by part as it was set, rings, close-up lenses, converters and lenses turned round', () => {
    bench.read('?subject=jumping-spider&as=stack');
    const found = search('crate', ['second-ring-36'], asked(), 'stack');
    for (let chain = 0; chain < found.count; chain += 97) {
      const { ids, parts } = found.chain(chain);
      const link = benchLink(ids, parts, 'body-36')!;
      const { chain: read, notices } = readChainBy(link.slice(link.indexOf('=') + 1), undefined);
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

  it('is none on a camera by its numbers, nor of a kit of one’s own', () => {
    expect(benchLink(['camera', 'lens-90'], [], undefined)).toBeUndefined();
    expect(benchLink(['camera', 'my-lens-1'], [], 'body-36')).toBeUndefined();
  });
});
