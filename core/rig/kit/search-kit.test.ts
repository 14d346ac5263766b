import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import {
  body36,
  closeUpOf,
  converter,
  couplingRing,
  normalLens,
  reversingRing,
  ringOf,
  wideLens,
} from '#tests/support/kits.ts';
import { gainOfPart } from './gain-of-part.ts';
import { FaultyKit, type KitRow, type KitSubject } from './kit.ts';
import { searchKit, type KitSearch } from './search-kit.ts';
import { verdicts, verdictWords } from './verdict.ts';

/** A coin’s worth of something that keeps still: m = 0.5 on a 36 mm sensor, N_w = 10 for the depth. */
const subject: KitSubject = {
  subjectWidth: 72,
  subjectDepth: 2,
  subjectSpeed: 0,
  leastFill: 0.5,
  nearestDistance: 50,
  longestExposure: 1,
  luminance: 100,
  iso: 100,
};
const rounding = { relative: 1e-12, because: 'rounding' };

const all = (search: KitSearch) => Array.from({ length: search.count }, (_, index) => search.chain(index));
const find = (search: KitSearch, ...ids: string[]) => {
  const found = all(search).find((chain) => chain.ids.join() === ids.join());
  if (!found) throw new Error(`no chain of ${ids.join(', ')}`);
  return found;
};

describe('searchKit', () => {
  it('sets a ring and a lens so that the subject fills the frame at the depth that is wanted', () => {
    const search = searchKit([body36, normalLens, ringOf(20)], subject, Infinity);
    expect(search.count).toBe(2);
    const { solved, merit, price, parts } = search.chain(search.suited[0]!);
    expect(solved).toMatchObject({ sharpPlane: 'in front' });
    if (solved.sharpPlane !== 'in front') return;
    expect(solved.magnification).toEqual(closeTo(0.5, rounding));
    expect(solved.effectiveFNumber).toEqual(closeTo(10, rounding));
    expect(parts[2]).toMatchObject({ focusMagnification: expect.closeTo(0.1, 12) });
    // 10² × 12.5/(100 × 100) s, of one second.
    expect(merit).toEqual(closeTo(-Math.log2(0.125), rounding));
    expect(price).toBe(8);
  });

  it('loses two stops of merit where the subject fills half of the frame', () => {
    // The ring alone gives m = 0.25 at most, on a lens stuck at infinity.
    const stuck: KitRow = {
      ...normalLens,
      lens: { ...normalLens.lens, focusing: { by: 'unit', closestMagnification: 0 } },
    };
    const search = searchKit([body36, stuck, ringOf(12.5)], { ...subject, subjectDepth: 0 }, Infinity);
    const { merit } = find(search, 'body 36', 'ring 12.5', 'lens 50');
    const effective = 1.8 * (1 + 0.25 / 1.2);
    expect(merit).toEqual(closeTo(-Math.log2((effective ** 2 * 12.5) / 1e4) - 2, rounding));
    expect(searchKit([body36, stuck, ringOf(12.5)], { ...subject, leastFill: 0.6 }, Infinity).suited).toHaveLength(0);
  });

  it('turns a lens round only with a reversing ring, and couples two only with a coupling ring', () => {
    const lenses = [body36, normalLens, wideLens];
    expect(searchKit(lenses, subject, Infinity).count).toBe(1);
    expect(searchKit([...lenses, reversingRing], subject, Infinity).count).toBe(3);
    const search = searchKit([...lenses, reversingRing, couplingRing], subject, Infinity);
    expect(all(search).map(({ ids }) => ids.join(' > '))).toEqual([
      'body 36 > lens 50',
      'body 36 > reversing > lens 28',
      'body 36 > reversing > lens 50',
      'body 36 > lens 50 > coupling > lens 28',
    ]);
  });

  it('counts two rings that are alike as two of one kind, and names both where both are used', () => {
    const search = searchKit([ringOf(12), body36, normalLens, ringOf(12, { id: 'another ring' })], subject, Infinity);
    expect(all(search).map(({ ids }) => ids.length)).toEqual([2, 3, 4]);
    expect(search.chain(2).ids).toEqual(['body 36', 'another ring', 'ring 12', 'lens 50']);
  });

  it('puts a ring on either side of a converter', () => {
    const search = searchKit([body36, normalLens, converter, ringOf(12)], subject, Infinity);
    expect(all(search).map(({ ids }) => ids.slice(1, -1).join(' > '))).toEqual([
      '',
      'ring 12',
      'converter',
      'converter > ring 12',
      'ring 12 > converter',
    ]);
  });

  it('leaves a lens wide open whose iris nothing reaches', () => {
    const kit = [body36, normalLens, ringOf(20, { coupled: false })];
    expect(find(searchKit(kit, subject, Infinity), 'body 36', 'ring 20', 'lens 50').verdict).toBe('too shallow');
    const flat = find(searchKit(kit, { ...subject, subjectDepth: 0.1 }, Infinity), 'body 36', 'ring 20', 'lens 50');
    expect(flat).toMatchObject({ verdict: 'suited', solved: { apertureControl: 'nowhere', fNumber: 1.8 } });
  });

  it('prefers the cheaper of two chains that do the same', () => {
    const search = searchKit(
      [body36, normalLens, ringOf(20), ringOf(8), ringOf(12)],
      { ...subject, leastFill: 1 },
      Infinity,
    );
    expect(search.chain(search.suited[0]!).ids).toEqual(['body 36', 'ring 20', 'lens 50']);
    expect(search.chain(search.suited[1]!).ids).toEqual(['body 36', 'ring 12', 'ring 8', 'lens 50']);
  });

  it('tells how often each verdict was passed, and has words for each', () => {
    const search = searchKit([body36, normalLens, ringOf(20), closeUpOf(4)], subject, 10);
    expect(search.tally).toMatchObject({ suited: 1, 'too small': 1, 'over budget': 2 });
    for (const verdict of verdicts) expect(verdictWords(verdict)).toMatch(/^[A-Z].*\.$/);
  });

  it('has no chain before the first or behind the last', () => {
    const search = searchKit([body36, normalLens], subject, Infinity);
    for (const index of [-1, 1, 0.5, NaN]) expect(() => search.chain(index)).toThrow(/there is no chain/);
  });

  it.each([
    ['subjectWidth', 0],
    ['subjectDepth', -1],
    ['subjectSpeed', NaN],
    ['leastFill', 0],
    ['leastFill', 1.1],
    ['nearestDistance', -1],
    ['longestExposure', Infinity],
    ['luminance', 0],
    ['iso', -100],
  ])('refuses a subject whose %s is %d', (name, value) => {
    expect(() => searchKit([body36, normalLens], { ...subject, [name]: value }, 0)).toThrow(OutOfRange);
  });

  it('refuses a budget that is none', () => {
    expect(() => searchKit([body36, normalLens], subject, NaN)).toThrow(/the budget is NaN/);
  });

  it('refuses a kit that allows more chains than can be gone through', () => {
    const rings = Array.from({ length: 40 }, (_, index) => ringOf(index + 1));
    expect(() => searchKit([body36, normalLens, converter, ...rings], subject, 0)).toThrow(/allows .* chains/);
  });
});

describe('a faulty kit', () => {
  const bad = (row: object) => row as KitRow;
  const internal = { by: 'internal', closestMagnification: 1, closestFocusDistance: -3, keeps: 'f-number' } as const;
  it.each<[string, KitRow, RegExp]>([
    ['unknown part', bad({ ...body36, id: 'x', part: 'tripod' }), /the part is tripod/],
    ['no name', bad({ ...ringOf(12), id: '' }), /'id' is ""/],
    ['no mount', bad({ ...ringOf(12), mount: undefined }), /'mount' is undefined/],
    ['a name twice', ringOf(12, { id: 'lens 50' }), /'lens 50' is the id of row 1 already/],
    ['a number missing', bad({ part: 'ring', id: 'x', price: 0, mount: 'club' }), /'extension' is undefined/],
    ['a text for a number', bad({ ...ringOf(12), extension: '12' }), /'extension' is 12/],
    ['a price below nothing', ringOf(12, { price: -1 }), /'price' is -1/],
    ['a price without end', ringOf(12, { price: Infinity }), /'price' is Infinity/],
    ['a sensor of no width', { ...body36, id: 'x', sensorWidth: 0 }, /'sensorWidth' is 0/],
    [
      'a converter that enlarges nothing',
      bad({ ...converter, converterFactor: 1 }),
      /'converterFactor' is 1; .* above 1/,
    ],
    ['a close-up lens without power', closeUpOf(0), /'closeUpPower' is 0/],
    ['a close-up lens of no width', bad({ ...closeUpOf(2), clearAperture: 0 }), /'clearAperture' is 0/],
    [
      'two registers of one mount',
      { ...body36, id: 'x', registerDistance: 40 },
      /register distance of 40 here, and of 44/,
    ],
    ['an iris that closes by opening', { ...normalLens, id: 'x', smallestAperture: 1 }, /opens to f\/1.8/],
    ['no lens inside', bad({ ...normalLens, id: 'x', lens: undefined }), /its lens is undefined/],
    [
      'a lens without focal length',
      { ...normalLens, id: 'x', lens: { ...normalLens.lens, focalLength: NaN } },
      /'focalLength' is NaN/,
    ],
    [
      'a focal length below nothing',
      { ...normalLens, id: 'x', lens: { ...normalLens.lens, focalLength: -50 } },
      /focal-length is -50/,
    ],
    [
      'a lens in words',
      bad({ ...normalLens, id: 'x', lens: { ...normalLens.lens, pupilMagnification: '1' } }),
      /'pupilMagnification' is 1; accepted: a finite number$/,
    ],
    [
      'a rim behind its flange',
      { ...normalLens, id: 'x', lens: { ...normalLens.lens, frontPrincipalDepth: -90 } },
      /behind the flange/,
    ],
    [
      'two numbers that contradict',
      { ...normalLens, id: 'x', lens: { ...normalLens.lens, focusing: internal } },
      /focus-distance/,
    ],
    [
      'a rear without size',
      { ...normalLens, id: 'x', lens: { ...normalLens.lens, rearProtrusion: NaN } },
      /'rearProtrusion'/,
    ],
    ['nothing at all', bad(null as unknown as object), /the row is null/],
    ['a half-hearted ring', bad({ ...ringOf(12), coupled: 'no' }), /'coupled' is "no"; accepted: true, false/],
    ['an endless close-up lens', bad({ ...closeUpOf(2), clearAperture: Infinity }), /'clearAperture' is Infinity/],
    ...(
      [
        ['no focusing', { focusing: null }, /its focusing is null/],
        ['focusing by magic', { focusing: { by: 'magic' } }, /'by' is "magic"; accepted: unit, internal, states/],
        ['no states', { focusing: { by: 'states' } }, /'states' is undefined/],
        ['a lens without its prescription', { focusing: { by: 'prescription' } }, /needs to have it/],
        ['a prescription without surfaces', { prescription: {} }, /'surfaces' is undefined; accepted: a list/],
        ['a surface that is none', { prescription: { surfaces: [null], stop: 0 } }, /one of its surfaces is null/],
        [
          'a prescription of nothing',
          { focusing: { by: 'prescription' }, prescription: { surfaces: [], stop: 0 } },
          /there is no surface/,
        ],
        ['a state that is none', { focusing: { by: 'states', states: [null] } }, /a state is null/],
        [
          'endless focusing',
          { focusing: { by: 'unit', closestMagnification: Infinity } },
          /'closestMagnification' is Infinity/,
        ],
        [
          'focusing of nothing',
          { focusing: { by: 'unit', closestMagnification: null } },
          /'closestMagnification' is null/,
        ],
        ['an entrance pupil left open', { focusing: { ...internal, keeps: undefined } }, /'keeps' is undefined/],
        ['an iris that nobody moves', { apertureControl: undefined }, /'apertureControl' is undefined/],
      ] as const
    ).map(([name, changed, words]): [string, KitRow, RegExp] => [
      name,
      bad({ ...normalLens, id: 'x', lens: { ...normalLens.lens, ...changed } }),
      words,
    ]),
  ])('is refused with the row and the reason: %s', (_, row, words) => {
    const search = () => searchKit([body36, normalLens, row], subject, Infinity);
    expect(search).toThrow(FaultyKit);
    expect(search).toThrow(words);
    expect(search).toThrow(/^kit, row 2:/);
  });

  it('is one without a camera or without a lens', () => {
    expect(() => searchKit([normalLens], subject, 0)).toThrow('kit: there is no camera');
    expect(() => searchKit([body36], subject, 0)).toThrow('kit: there is no lens');
  });
});

describe('gainOfPart', () => {
  it('tells what a ring would make possible that was not', () => {
    const gain = gainOfPart([body36, normalLens], ringOf(20), subject, 10);
    expect(gain).toMatchObject({ chains: 1, suited: 1, bestBefore: null, merit: null });
    expect(gain.bestAfter?.ids).toEqual(['body 36', 'ring 20', 'lens 50']);
  });

  it('is everything for the first lens', () => {
    const gain = gainOfPart([body36, ringOf(20)], normalLens, subject, Infinity);
    expect(gain).toMatchObject({ chains: 2, suited: 1, bestBefore: null, merit: null });
    expect(() => gainOfPart([ringOf(20)], normalLens, subject, Infinity)).toThrow('kit: there is no camera');
  });

  it('is nothing for a part that is beyond the budget', () => {
    expect(gainOfPart([body36, normalLens], ringOf(20), subject, 7)).toMatchObject({ suited: 0, bestAfter: null });
  });

  it('is counted in stops where the job could be done before', () => {
    const still = { ...subject, subjectDepth: 0 };
    // Filling two thirds of the frame before, all of it with the longer ring.
    const { merit } = gainOfPart([body36, normalLens, ringOf(10)], ringOf(17.5), still, Infinity);
    const cone = (m: number) => 2 * Math.log2(1 + m / 1.2);
    expect(merit).toEqual(
      closeTo(-2 * Math.log2(0.35 / 0.5) - (cone(0.5) - cone(0.35)), { relative: 1e-9, because: 'rounding' }),
    );
  });
});
