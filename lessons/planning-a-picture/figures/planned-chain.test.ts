import fc from 'fast-check';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { textOfChain } from '#site/chain/chain-in-text.ts';
import { valueOf, printAnswer, type Answer } from '#site/state/answer.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { bench } from '../bench.svelte.ts';
import { askedOf, ofAsked, spelledOut } from './asked-of-chain.ts';
import { chains } from './chains.ts';
import { drawnPlan } from './drawn-plan.ts';
import { plannedChain, rangesOf } from './planned-chain.ts';
import { ownReader } from './own-reader.ts';
import { brokenNow } from './said.svelte.ts';
import { subjects } from './subjects.ts';

beforeAll(async () => {
  chains.here = await import('./planned-chain.ts');
  ownReader.here = (await import('#site/chain/own-in-text.ts')).readOwn;
});
afterEach(() => void bench.read(''));

const asked = () => askedOf(bench.named(...ofAsked));
const rounding = { relative: 1e-6, because: 'focus is found by halving' };

describe('a chain of a plan', () => {
  it('is set for the size that is wanted, where it reaches it', () => {
    bench.read('?chain=body-36,ring-24,lens-50&frame-fill=0.1');
    expect(bench.number('chain.magnification')).toEqual(closeTo(bench.number('magnification'), rounding));
    expect(bench.answers.magnification).toBeTypeOf('number');
    // 24 mm over 50 mm, and 0.12 by its own focusing.
    expect(bench.number('extension')).toBe(24);
  });

  it('says what it gives where it does not', () => {
    bench.read('?chain=body-36,ring-24,lens-50');
    expect(bench.words('magnification')).toBe('3× asked, it gives 0.63× at most');
    bench.read('?chain=body-36,ring-36,lens-50&frame-fill=0.05');
    expect(bench.words('magnification')).toBe('0.3× asked, it gives 0.72× at least');
  });

  it('has its iris set between its marks, and says so where the plan asks for another', () => {
    bench.read('?chain=body-36,ring-36,lens-50&f-number=32&frame-fill=0.14');
    expect(bench.number('set.f-number')).toBe(16);
    expect(plannedChain('body-36,ring-36,lens-50', asked()).notices).toEqual([
      '50 mm f/1.8 goes from f/1.8 to f/16: f/16 is taken.',
    ]);
  });

  it('is closed no further than to one mark, whatever is set, by the engine’s cone', () => {
    const chain = 'body-36,lens-200,coupling-ring,lens-50:turned';
    for (const fNumber of [4, 5.6, 8, 20]) {
      bench.read(`?subject=hoverfly-head&chain=${chain}&f-number=${fNumber}`);
      const mark = bench.number('finest.f-number');
      expect(mark).toBeCloseTo(25.7, 1);
      const { circleOfConfusion, wavelength } = asked();
      expect(bench.would('effective-f-number', { 'f-number': mark })).toEqual(
        closeTo(circleOfConfusion / (Math.SQRT2 * wavelength), rounding),
      );
    }
  });

  it('has marks without effect where another stop limits, and says up to which', () => {
    const chain = 'body-36,lens-200,coupling-ring,lens-50:turned';
    bench.read(`?subject=hoverfly-head&chain=${chain}&f-number=4`);
    const [, first] = /^f\/25\.7; another stop limits up to f\/([\d.]+)$/.exec(bench.words('finest.f-number'))!;
    const at = (fNumber: number) => bench.would('effective-f-number', { 'f-number': fNumber });
    expect(at(0.98 * Number(first))).toEqual(closeTo(at(4), rounding));
    expect(at(1.02 * Number(first))).toBeGreaterThan(1.01 * at(4));
    bench.read(`?subject=hoverfly-head&chain=${chain}&f-number=20`);
    expect(bench.words('finest.f-number')).toBe('f/25.7');
    expect(bench.words('finest.f-number')).not.toContain('another');
  });

  it('is the same as one lens where it is one', () => {
    bench.read('?lens=lens-50&frame-fill=0.2');
    const one = { ...bench.answers };
    // Bellows as long as the extension is, and the lens at its closest.
    bench.read('?chain=body-36,bellows,lens-50&frame-fill=0.2');
    expect(bench.number('extension')).toEqual(closeTo(valueOf(one.extension)!, rounding));
    for (const name of ['working-distance', 'effective-f-number', 'depth-of-field', 'slowest.exposure-time'] as const)
      expect(bench.number(name)).toEqual(closeTo(valueOf(one[name])!, rounding));
  });

  it('has working that gives what the engine gives, or none', () => {
    let shown = 0;
    for (const chain of [
      'body-36,lens-90,close-up-4',
      'body-36,ring-36,converter-2,lens-50',
      'body-36,reversing-ring,lens-28:turned',
      'body-36,lens-200,coupling-ring,lens-50:turned',
      'body-36,lens-50,coupling-ring,lens-28:turned',
      'body-36,bellows,lens-100',
    ]) {
      for (const fill of [0.05, 0.2, 0.6]) {
        bench.read(`?chain=${chain}&frame-fill=${fill}`);
        for (const name of ['working-distance', 'effective-f-number'] as const) {
          const worked = bench.number(`chain.${name}`, undefined);
          if (worked === undefined) continue;
          shown++;
          expect(worked, `${chain} ${name}`).toEqual(closeTo(bench.number(name), rounding));
        }
      }
    }
    expect(shown).toBeGreaterThan(20);
  });

  it('is the best of the bag for each subject, of the fewest parts that will do', () => {
    const best = Object.keys(subjects).map((subject) => {
      bench.read(`?subject=${subject}&chain=bag`);
      return `${subject}: ${plannedChain('bag', asked()).name}`;
    });
    expect(best).toContain('butterfly: 90 mm');
    expect(best).toContain('stamp: ring 12, 90 mm');
  });

  it('of what cannot be built or read says so, and leaves no number broken', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.constantFrom(
            'body-36',
            'lens-50',
            'lens-28:turned',
            'ring-36',
            'close-up-4',
            'converter-2',
            'objective-4',
            'bellows:e60',
            'coupling-ring',
            'nothing',
            'my-ring:extension=x',
            'lens-90:far',
          ),
          { minLength: 2, maxLength: 6 },
        ),
        fc.constantFrom(0.05, 0.3, 1),
        (pieces, fill) => {
          bench.read(`?chain=${pieces.join(',')}&frame-fill=${fill}`);
          expect(bench.notices).toEqual([]);
          for (const [name, answer] of Object.entries(bench.answers as Readonly<Record<string, Answer>>)) {
            expect(valueOf(answer) ?? 0).not.toBeNaN();
            expect(printAnswer(name as QuantityName, answer)).not.toMatch(/^$|NaN|undefined|null/);
          }
          const { notices } = plannedChain(pieces.join(','), asked());
          if (pieces.some((piece) => piece === 'nothing' || piece.startsWith('my-')))
            expect(notices.length).toBeGreaterThan(0);
        },
      ),
      { seed: 5, numRuns: 150 },
    );
  });
});

describe('a chain that gives nothing', () => {
  it.each([
    ['body-36,lens-999', 'Part 2 of the link, “lens-999”: the crate has nothing of that name.'],
    [
      'body-36,lens-50,lens-50',
      'This chain cannot be built: a second lens goes on the first front to front, that is reversed.',
    ],
    ['body-36,lens-50', undefined],
    ['own', undefined],
  ])('says why in one sentence: %s', (chain, why) => {
    bench.read(`?chain=${chain}`);
    expect(brokenNow()).toBe(why);
    expect(bench.words('extension')).toBe(why ? 'none' : chain === 'own' ? '145\u202fmm' : 'none in this chain');
  });

  it('is no chain at all by a single word, which the page says', () => {
    bench.read('?chain=rubbish');
    expect(bench.notices.map(({ text }) => text).join()).toContain('“rubbish”, which this page cannot use');
  });
});

describe('a lens of which something is assumed', () => {
  const lens =
    'my-lens:name=My_85:focal-length=85:max-aperture=1.8:focus-distance=800:focusing=whole:iris=camera:register-distance=44';

  it('has ranges that the usual one lies in, and says why', () => {
    bench.read(`?chain=body-36,ring-36,${lens}&frame-fill=0.08`);
    const { texts, because } = rangesOf(`body-36,ring-36,${lens}`, asked());
    const [least, most] = texts['working-distance']!.match(/[\d.]+/g)!.map(Number);
    expect(least).toBeLessThan(bench.number('working-distance'));
    expect(most).toBeGreaterThan(bench.number('working-distance'));
    expect(because).toEqual(['My 85: P, h, HH′, length and m₀ of this lens are assumed.']);
  });

  it('has its range in the readings and in the drawing, and in no numbers of other settings', () => {
    bench.read(`?question=8&chain=body-36,ring-36,${lens}&frame-fill=0.08`);
    const { texts } = rangesOf(`body-36,ring-36,${lens}`, asked());
    for (const name of ['working-distance', 'effective-f-number'] as const) {
      expect(texts[name]).toContain(' to ');
      expect(bench.words(name)).toBe(texts[name]);
      expect(printAnswer(name, bench.at({ 'frame-fill': 0.2 })[name])).not.toContain(' to ');
    }
    expect(drawnPlan()!.dimensions!.map(({ value }) => value)).toContain(texts['working-distance']);
  });

  it('has none where all is known', () => {
    bench.read('?chain=body-36,ring-36,lens-90');
    expect(rangesOf('body-36,ring-36,lens-90', asked())).toEqual({ texts: {}, because: [] });
  });
});

describe('what an address may spell out as a chain', () => {
  it.each(['foo', '', 'body-36', 'a b,c', `${'x,'.repeat(20)}y`, `a,${'b'.repeat(7000)}`])('is not %.30j', (text) => {
    expect(spelledOut(text)).toBeUndefined();
  });

  it('comes back as it was read', () => {
    const text = textOfChain(plannedChain('body-36,ring-12,lens-50', asked()).chain);
    bench.read(`?chain=${text}`);
    const address = bench.write('');
    bench.read('');
    bench.read(address);
    expect(bench.chosen('chain')).toBe(text);
    expect(Object.keys(bench.choices['chain']!.options)).toContain(text);
  });
});
