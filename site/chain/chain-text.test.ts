import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assembleRig } from '#core/rig/assemble.ts';
import { solveRig } from '#core/rig/solve.ts';
import { benchChains } from '#tests/support/bench-chains.ts';
import { isSameThing } from './chain-in-text.ts';
import { chainInAddress, readChain, writeChain } from './chain-text.ts';
import { engineChain, firstChain, mostLinks } from './chain.ts';
import { crateThings } from './crate-things.ts';
import { thingOf } from './own-thing.ts';

const slugs = [...crateThings.keys()];
const ofCrate = fc.array(
  fc.tuple(
    fc.constantFrom(...slugs.slice(2)),
    fc.constantFrom('', ':turned', ':far', ':m0.1', ':f11', ':e80', ':f4:m0.05'),
  ),
  { maxLength: 8 },
);

describe('a chain as a text', () => {
  it('is short where all of it is of the crate', () => {
    expect(writeChain(firstChain())).toBe('body-36,ring-24,lens-50');
    expect(chainInAddress(readChain('body-23,reversing-ring,lens-28:turned:f11').chain)).toBe(
      'body-23,reversing-ring,lens-28:turned:f11',
    );
  });

  it('names a part of a kit as that kit does, wherever it was opened', () => {
    const camera = {
      kind: 'camera',
      name: 'My camera',
      'sensor-width': 36,
      'sensor-height': 24,
      'register-distance': 44,
    } as const;
    const ofKit = thingOf(camera, 'my-camera-1');
    const ofLink = readChain(writeChain([{ thing: ofKit }])).chain[0]!.thing;
    expect(ofLink.slug).not.toBe(ofKit.slug);
    expect(isSameThing(ofLink, ofKit)).toBe(true);
    expect(isSameThing(ofLink, thingOf({ ...camera, 'sensor-width': 35.9 }, 'my-camera-2'))).toBe(false);
    expect(isSameThing(ofLink, firstChain()[0]!.thing)).toBe(false);
  });

  it('is read back as the same chain, own parts spelled out so that no kit is needed', () => {
    fc.assert(
      fc.property(benchChains, ({ chain }) => {
        const text = new URLSearchParams(`?chain=${chainInAddress(chain)}`).get('chain')!;
        const { chain: again, notices } = readChain(text);
        expect(notices).toEqual([]);
        expect(engineChain(again)).toEqual(engineChain(chain));
        expect(writeChain(again)).toBe(writeChain(chain));
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  it('keeps names whatever is in them', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 60 }), (name) => {
        const part = { kind: 'ring', name, extension: 13, contacts: 'no' } as const;
        const thing = { slug: 'x', kind: 'ring', name, part, isOwn: true } as const;
        const text = new URLSearchParams(`?chain=${chainInAddress([...firstChain(), { thing }])}`).get('chain')!;
        const { chain, notices } = readChain(text);
        expect(notices).toEqual([]);
        const plain = name
          .replace(/[\u00a0\u202f]/g, ' ')
          .replace(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, '')
          .trim();
        expect(chain[3]!.thing.name).toBe(plain === '' ? 'extension ring' : plain);
      }),
      { seed: 6, numRuns: 300 },
    );
  });

  it.each([
    ['body-36,ring-99,lens-50', /“ring-99”: the crate has nothing of that name.*lens-50/s, 'body-36,lens-50'],
    ['ring-24,lens-50', /names no camera/, 'body-36,ring-24,lens-50'],
    ['body-36,body-23,lens-50', /has one camera/, 'body-36,lens-50'],
    ['body-36,ring-24:turned,lens-50', /“turned” is no setting of 24 mm ring/, 'body-36,ring-24,lens-50'],
    ['body-36,lens-50:f-3', /“f-3” is no setting of 50 mm/, 'body-36,lens-50'],
    ['body-36,lens-50:mNaN', /“mNaN” is no setting/, 'body-36,lens-50'],
    [
      'body-36,lens-50:f99',
      /“lens-50”: it goes from f\/1\.8 to f\/16, so f\/99 is taken as f\/16\./,
      'body-36,lens-50:f16',
    ],
    ['body-36,lens-50:m3', /it goes up to 0\.15×, so 3× is taken as 0\.15×\./, 'body-36,lens-50:m0.15'],
    [
      'body-36,bellows:e5,lens-50',
      /it goes from 40\u202fmm to .*, so 5\u202fmm is taken as 40\u202fmm\./,
      'body-36,bellows:e40,lens-50',
    ],
    ['body-36,my-ring:contacts=no,lens-50', /does not say extension/, 'body-36,lens-50'],
    ['body-36,my-ring:extension=-3:contacts=no', /Length takes a length from 0\.1/, 'body-36'],
    ['body-36,my-sofa:extension=3', /no such kind of part/, 'body-36'],
    ['body-36,my-bellows:shortest=90:longest=40', /“Longest” has to be more/, 'body-36'],
    ['body-36,__proto__,constructor', /“__proto__”/, 'body-36'],
  ])('says what is wrong with “%s” and keeps what can be kept', (text, words, kept) => {
    const { chain, notices } = readChain(text);
    expect(notices.join(' ')).toMatch(words);
    expect(writeChain(chain)).toBe(kept);
  });

  it('has an end', () => {
    const { chain, notices } = readChain(`body-36,${'ring-12,'.repeat(60)}lens-50`);
    expect(chain.length).toBeLessThanOrEqual(mostLinks);
    expect(notices.join(' ')).toMatch(/parts at most/);
    expect(readChain('ring-12,'.repeat(5000)).notices.join(' ')).toMatch(/longer than any chain/);
    expect(readChain(Array(60).fill('ring-24').join()).chain).toHaveLength(mostLinks);
  });

  it('makes of anything a chain that begins with its one camera', () => {
    const pieces = ofCrate.map((all) => all.map(([slug, set]) => slug + set).join(','));
    fc.assert(
      fc.property(fc.oneof(fc.string({ maxLength: 200 }), pieces), (text) => {
        const { chain } = readChain(text);
        expect(chain.map(({ thing }) => thing.kind).indexOf('camera')).toBe(0);
        expect(chain.filter(({ thing }) => thing.kind === 'camera')).toHaveLength(1);
        // Written again it is what it was read as.
        expect(writeChain(readChain(writeChain(chain)).chain)).toBe(writeChain(chain));
      }),
      { seed: 7, numRuns: 1000 },
    );
  });
});

describe('what a microscope is made of, on a camera', () => {
  const solved = (text: string) => {
    const { chain, notices } = readChain(text);
    expect(notices).toEqual([]);
    return solveRig(assembleRig(engineChain(chain).parts));
  };
  const camera = 'my-camera:sensor-width=36:sensor-height=24:register-distance=44';
  const ring = (extension: number) => `my-ring:extension=${extension}:contacts=no`;
  const engraved = 'numerical-aperture=0.25:working-distance=6.5';

  it('has its engraved magnification and distance where its picture falls 150 mm behind the shoulder, as a tube of 160 mm has it', () => {
    const old = `my-finite-objective:objective-magnification=10:${engraved}:tube-length=160`;
    // ISO 9345: the picture lies 10 mm inside the tube (from memory). 44 + 106 = 150.
    const found = solved(`${camera},${ring(106)},${old}`);
    expect(found).toMatchObject({ sharpPlane: 'in front' });
    if (found.sharpPlane !== 'in front') return;
    expect(found.magnification).toBeCloseTo(10, 9);
    expect(found.workingDistance).toBeCloseTo(6.5, 9);
    // N_w = m/(2 NA).
    expect(found.effectiveFNumber).toBeCloseTo(20, 9);
  });

  it('has it on its own tube lens, wherever before it the objective is', () => {
    const front = `my-objective:objective-magnification=10:${engraved}:tube-focal-length=200`;
    for (const between of ['', `,${ring(60)}`]) {
      const found = solved(`${camera},${ring(156)},my-tube-lens:tube-focal-length=200${between},${front}`);
      if (found.sharpPlane !== 'in front') throw new Error(found.sharpPlane);
      expect(found.magnification).toBeCloseTo(10, 9);
      expect(found.workingDistance).toBeCloseTo(6.5, 9);
    }
  });

  it('takes a converter by its planes where all three numbers are said', () => {
    const converter = 'my-converter:converter-factor=2:converter-length=40:contacts=yes';
    const planes = ':focal-length=80:principal-separation=0:front-principal-depth=4';
    // One thin lens for a register of 44 mm: a = 40/(2 − 1) mm before the picture, f = −2 · 40/(2 − 1) mm.
    const [byMarks, byPlanes] = [`${camera},${converter},lens-50`, `${camera},${converter}${planes},lens-50`].map(
      solved,
    );
    if (byMarks?.sharpPlane !== 'in front' || byPlanes?.sharpPlane !== 'in front') throw new Error('not in front');
    expect(byPlanes.magnification).toBeCloseTo(byMarks.magnification, 9);
    expect(byPlanes.workingDistance).toBeCloseTo(byMarks.workingDistance, 9);
  });
});

describe('parts of a reader’s own in one link', () => {
  const ring = (length: number) => `my-ring:name=thick:extension=${length}:contacts=no`;

  it('are one thing twice where the same is said of both, as in the kit they come from', () => {
    const [, one, other] = readChain(`body-36,${ring(13)},${ring(13)},lens-50`).chain;
    expect(other!.thing).toBe(one!.thing);
    expect(one!.thing.name).toBe('thick');
  });

  it('are told apart where they differ', () => {
    const { chain } = readChain(`body-36,${ring(13)},${ring(12)},${ring(13)},lens-50`);
    expect(chain.slice(1, 4).map(({ thing }) => thing.name.replaceAll('\u202f', ' '))).toEqual([
      'thick, 13 mm',
      'thick, 12 mm',
      'thick, 13 mm',
    ]);
  });
});
