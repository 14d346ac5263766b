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
import { contrast } from '#core/wave/contrast.formula.ts';
import { chainCount } from './chain-count.ts';
import { gainOfPart } from './gain-of-part.ts';
import { FaultyKit, type KitRow, type KitSubject } from './kit.ts';
import { searchKit } from './search-kit.ts';
import type { KitSearch } from './search-sound-kit.ts';
import { verdicts, verdictWords } from './verdict.ts';

/** A coin’s worth of something that keeps still: m = 0.5 on a 36 mm sensor, N_w = 10 for the depth by geometry alone. */
const subject: KitSubject = {
  subjectWidth: 72,
  subjectDepth: 2,
  subjectSpeed: 0,
  leastFill: 0.5,
  nearestDistance: 50,
  longestExposure: 1,
  luminance: 100,
  iso: 100,
  wavelength: 0.00055,
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
    // The ends' defocus, m² (Z/2)/N_w but for 1/u, and diffraction's λ N_w fill c together.
    const nw = solved.effectiveFNumber;
    const pupil = closeTo(0.025, { relative: 1e-4, because: 'Z²/u² is left out' });
    expect(Math.hypot(0.25 / nw, 0.00055 * nw)).toEqual(pupil);
    expect(nw).toEqual(closeTo(10.2647, { absolute: 2e-4, because: 'as above, by hand' }));
    expect(parts[2]).toMatchObject({ focusMagnification: expect.closeTo(0.1, 12) });
    // N_w² × 12.5/(100 × 100) s, of one second.
    expect(merit).toEqual(closeTo(-Math.log2((nw ** 2 * 12.5) / 1e4), rounding));
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

  it('prefers fewer parts, then more room, where merits differ by less than a tenth of a stop', () => {
    // Depth decides: every chain ends at one N_w, whatever it is made of.
    const bag = [
      body36,
      normalLens,
      ringOf(20),
      ringOf(8),
      ringOf(12),
      closeUpOf(2),
      closeUpOf(4),
      wideLens,
      reversingRing,
    ];
    const search = searchKit(bag, { ...subject, leastFill: 0.9, nearestDistance: 0 }, Infinity);
    const ranked = [...search.suited].map((chain) => search.chain(chain));
    expect(ranked.length).toBeGreaterThan(4);
    const tenths = ranked.map(({ merit }) => Math.round(10 * merit!));
    expect(tenths).toEqual([...tenths].sort((one, other) => other - one));
    const equals = ranked.filter((_, place) => tenths[place] === tenths[0]);
    expect(new Set(equals.map(({ merit }) => merit)).size).toBeGreaterThan(1);
    const lengths = equals.map(({ parts }) => parts.length);
    expect(lengths).toEqual([...lengths].sort((one, other) => one - other));
    expect(new Set(lengths).size).toBeGreaterThan(1);
  });

  it('does not call suited what diffraction spoils: 0.5 mm at 2.24 times life size with a circle of 30 µm', () => {
    const camera: KitRow = { ...body36, circleOfConfusion: 0.03 };
    const small: KitSubject = {
      ...subject,
      subjectWidth: 36 / 2.24,
      subjectDepth: 0.5,
      leastFill: 1,
      nearestDistance: 0,
      longestExposure: 30,
    };
    const kit = [camera, normalLens, ringOf(36), ringOf(72)];
    const { verdict, solved } = find(searchKit(kit, small, Infinity), 'body 36', 'ring 36', 'ring 72', 'lens 50');
    expect(verdict).toBe('too soft');
    if (solved.sharpPlane !== 'in front') throw new Error(solved.sharpPlane);
    // Set where it blurs least, and still more than c: geometry alone asked for N_w = 41.8 and was content.
    const [defocus, diffraction] = [(2.24 ** 2 * 0.25) / solved.effectiveFNumber, 0.00055 * solved.effectiveFNumber];
    expect(defocus).toEqual(closeTo(diffraction, { relative: 1e-3, because: 'Z²/u² is left out' }));
    expect(Math.hypot(defocus, diffraction)).toBeGreaterThan(0.03);
    const shallow = searchKit(kit, { ...small, subjectDepth: 0.3 }, Infinity);
    expect(find(shallow, 'body 36', 'ring 36', 'ring 72', 'lens 50').verdict).toBe('suited');
  });

  it('calls a flat subject too soft from N_w = c/λ on, in which the detail that c allows has two fifths of its contrast', () => {
    const slow: KitRow = { ...normalLens, maxAperture: 20, smallestAperture: 22 };
    const coarse = { ...subject, subjectDepth: 0, longestExposure: 30 };
    const verdictAt = (circleOfConfusion: number) =>
      find(
        searchKit([{ ...body36, circleOfConfusion }, slow, ringOf(20)], coarse, Infinity),
        'body 36',
        'ring 20',
        'lens 50',
      );
    // Half life size, P = 1.2: N_w = 20 (1 + 0.5/1.2).
    const limit = 0.00055 * 20 * (1 + 0.5 / 1.2);
    expect(verdictAt(limit * 1.001).verdict).toBe('suited');
    expect(verdictAt(limit * 0.999).verdict).toBe('too soft');
    expect(contrast({ spatialFrequency: 1 / (2 * limit), cutoffFrequency: 1 / limit })).toEqual(
      closeTo(0.391, { absolute: 5e-4, because: 'three figures' }),
    );
  });

  it('allows what does not fill the frame the less blur, for it is enlarged the more', () => {
    const stuck: KitRow = {
      ...normalLens,
      lens: { ...normalLens.lens, focusing: { by: 'unit', closestMagnification: 0 } },
    };
    // m = 0.25, half of the frame: c counts as 12.5 µm, for depth and for movement.
    const moving = { ...subject, subjectDepth: 2, subjectSpeed: 1, longestExposure: 1 };
    const { merit, solved } = find(
      searchKit([body36, stuck, ringOf(12.5)], moving, Infinity),
      'body 36',
      'ring 12.5',
      'lens 50',
    );
    if (solved.sharpPlane !== 'in front') throw new Error(solved.sharpPlane);
    const nw = solved.effectiveFNumber;
    const near = { relative: 1e-4, because: 'Z²/u² is left out' };
    expect(Math.hypot(0.25 ** 2 / nw, 0.00055 * nw)).toEqual(closeTo(0.0125, near));
    expect(merit).toEqual(
      closeTo(Math.log2(0.0125 / 0.25 / ((nw ** 2 * 12.5) / 1e4)) - 2, { relative: 1e-9, because: 'rounding' }),
    );
  });

  it('takes a subject neither so large that it is too near nor so small that it is too soft, where only something between will do', () => {
    const slow: KitRow = {
      ...normalLens,
      maxAperture: 20,
      lens: { ...normalLens.lens, focusing: { by: 'unit', closestMagnification: 1 } },
    };
    const flat: KitSubject = { ...subject, subjectWidth: 36, subjectDepth: 0, leastFill: 0.3, longestExposure: 60 };
    const shy = { ...flat, nearestDistance: 115 };
    const camera = { ...body36, circleOfConfusion: 0.035 };
    // Only from m = 20/(0.035/0.00055 − 20/1.2) = 0.426 on is N_w within c/λ for what fills so much of the frame.
    const { verdict, solved } = searchKit([camera, slow], shy, Infinity).chain(0);
    expect(verdict).toBe('suited');
    if (solved.sharpPlane !== 'in front') throw new Error(solved.sharpPlane);
    // w = f (1 + 1/m) − h
    expect(solved.magnification).toEqual(
      closeTo(50 / (115 + 22 - 50), { relative: 1e-3, because: 'found by halving' }),
    );
    expect(searchKit([camera, slow], { ...flat, nearestDistance: 150 }, Infinity).chain(0).verdict).toBe('too soft');
  });

  it('couples no zoom to itself at another of its settings', () => {
    const zoomAt = (focalLength: number): KitRow => ({
      ...normalLens,
      id: `zoom at ${focalLength}`,
      lens: { ...normalLens.lens, focalLength },
      zoom: 'zoom',
    });
    const kit = [body36, zoomAt(28), zoomAt(55), normalLens, couplingRing];
    const search = searchKit(kit, subject, Infinity);
    const coupled = all(search).filter(({ ids }) => ids.includes('coupling'));
    expect(coupled.map(({ ids }) => [ids[1], ids[3]].join(' > '))).toEqual([
      'lens 50 > zoom at 28',
      'lens 50 > zoom at 55',
      'zoom at 28 > lens 50',
      'zoom at 55 > lens 50',
    ]);
    expect(chainCount(kit)).toBe(search.count);
    expect(() =>
      searchKit(
        [
          ...kit,
          { ...normalLens, id: 'x', mount: 'other', lens: { ...normalLens.lens, registerDistance: 46 }, zoom: 'zoom' },
        ],
        subject,
        0,
      ),
    ).toThrow(/kit, row 5: zoom 'zoom' has the mount 'other' here, and 'club' in row 2/);
    expect(() => searchKit([body36, { ...normalLens, zoom: '' }], subject, 0)).toThrow(/'zoom' is ""/);
  });

  it('does not let the rounding of prices break a budget', () => {
    const kit = [body36, { ...normalLens, price: 0.1 }, ringOf(20, { price: 0.2 })];
    expect(find(searchKit(kit, subject, 0.3), 'body 36', 'ring 20', 'lens 50').verdict).toBe('suited');
    expect(find(searchKit(kit, subject, 0.29), 'body 36', 'ring 20', 'lens 50').verdict).toBe('over budget');
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
    ['wavelength', 0],
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
    [
      'a converter that gathers light',
      bad({ ...converter, points: { focalLength: 90, principalSeparation: 0, frontPrincipalDepth: 0 } }),
      /'focalLength' is 90; .* below 0/,
    ],
    [
      'a converter of which one plane is known',
      bad({ ...converter, points: { focalLength: -90, principalSeparation: 0 } }),
      /'frontPrincipalDepth' is undefined/,
    ],
    ['a close-up lens without power', closeUpOf(0), /'closeUpPower' is 0/],
    ['a close-up lens behind its thread', bad(closeUpOf(2, { seat: -1 })), /'seat' is -1/],
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

  it('is nothing for a part that only does the same with fewer parts', () => {
    const kit = [body36, normalLens, ringOf(8), ringOf(12)];
    const gain = gainOfPart(kit, ringOf(20.05), { ...subject, leastFill: 1 }, Infinity);
    expect(gain.bestBefore?.ids).toHaveLength(4);
    expect(gain.bestAfter?.ids).toEqual(['body 36', 'ring 20.05', 'lens 50']);
    expect(gain.merit).toEqual(closeTo(0, { absolute: 1e-9, because: 'rounding' }));
    expect(gain.merit).toBeGreaterThanOrEqual(0);
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
