import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { depthOfField } from '#core/depth/depth-of-field.formula.ts';
import { slowestExposureTime } from '#core/exposure/slowest-exposure-time.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { lightLoss } from '#core/gaussian/light-loss.formula.ts';
import { magnificationFromExtension } from '#core/gaussian/magnification-from-extension.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistance } from '#core/gaussian/working-distance.formula.ts';
import { frameStep } from '#core/stack/frame-step.formula.ts';
import { airyDiameter } from '#core/wave/airy-diameter.formula.ts';
import { usualConditions } from '#site/bench/conditions.ts';
import { readChain, writeChain } from '#site/chain/chain-text.ts';
import { crateThings } from '#site/chain/crate-things.ts';
import { marks } from '#site/state/lens-marks.ts';
import { blockOf, blocksOf, isBlock, withEachLens, withEachSetOfRings, type Block } from './card.ts';
import { usualFNumbers } from './state.ts';
import { headingOf, misfitsInWords, ruleInWords } from './words.ts';

const chainOf = (text: string) => readChain(text).chain;
const block = (text: string, fNumbers = usualFNumbers, conditions = usualConditions): Block => {
  const found = blockOf(chainOf(text), fNumbers, conditions);
  if (!isBlock(found)) throw new Error(found.why);
  return found;
};
/** Two ways to a number, that of the engine and that of the lessons, agree but for rounding. */
const agree = (found: number | undefined, expected: number) =>
  expect(Math.abs(found! / expected - 1)).toBeLessThan(1e-9);

describe('the cells of a card', () => {
  const sets = [[], [12], [24], [36], [12, 24], [12, 36], [24, 36], [12, 24, 36]];

  it.each(sets)(
    'are what the formulas of the lessons give, for the 50 mm lens on rings of %s mm',
    (...rings: number[]) => {
      const lens = marks['lens-50'];
      const extension = rings.reduce((sum, one) => sum + one, 0);
      const focalLength = lens['focal-length'];
      const [pupilMagnification, principalSeparation] = [lens['pupil-magnification'], lens['principal-separation']];
      const focusMagnification = lens.closest['focus-magnification'];
      const magnification = magnificationFromExtension({ focalLength, focusMagnification, extension });
      const found = block(['body-36', ...rings.map((one) => `ring-${one}`), 'lens-50'].join(','));
      agree(found.magnification, magnification);
      agree(found.fieldWidth, 36 / magnification);
      agree(found.fieldHeight, 24 / magnification);
      agree(
        found.workingDistance,
        workingDistance({
          subjectDistance: subjectDistance({ focalLength, magnification }),
          frontPrincipalDepth: lens['front-principal-depth'],
        }),
      );
      expect(found.extension).toBe(extension);
      let cells = 0;
      let empty = 0;
      for (const { fNumber, isThere, isSpoiled, values } of found.columns) {
        expect(isThere).toBe(fNumber! <= lens.smallestAperture);
        if (!isThere) {
          expect(values).toEqual({});
          continue;
        }
        const given = { fNumber: fNumber!, magnification, pupilMagnification, focalLength };
        const N = effectiveFNumber(given);
        agree(values['effective-f-number'], N);
        agree(values['light-loss'], lightLoss({ effectiveFNumber: N, fNumber: fNumber! }));
        const cone = {
          magnification,
          entrancePupil: entrancePupil(given),
          entrancePupilDistance: entrancePupilDistance({ focalLength, magnification, pupilMagnification }),
        };
        const depth = depthOfField({ ...cone, circleOfConfusion: 0.02 });
        agree(values['depth-of-field'], depth);
        const spread = 0.00055 * N;
        const frame =
          spread < 0.02 ? depthOfField({ ...cone, circleOfConfusion: Math.sqrt(0.02 ** 2 - spread ** 2) }) : 0;
        if (frame > 0) agree(values['subject-depth'], frame);
        else {
          expect(values['subject-depth']).toBe(0);
          expect(values['frame-step']).toBeUndefined();
          empty++;
        }
        if (frame > 0)
          agree(values['frame-step'], frameStep({ depthOfField: frame, overlap: usualConditions.overlap }));
        expect(isSpoiled).toBe(spread > 0.02 / Math.SQRT2);
        agree(values.point, airyDiameter({ wavelength: 0.00055, effectiveFNumber: N }) / 0.006);
        agree(
          values['exposure-time'],
          slowestExposureTime({
            circleOfConfusion: 0.02,
            focalLength,
            magnification,
            principalSeparation,
            shakeRate: usualConditions['shake-rate'],
            sidewaysSpeed: usualConditions['sideways-speed'],
            subjectSpeed: usualConditions['subject-speed'],
            stabilisation: 0,
          }),
        );
        cells += Object.keys(values).length;
      }
      // Seven lines at six f-numbers, but for the step where a frame holds nothing: none was passed over.
      expect(cells).toBe(42 - empty);
    },
  );

  it('follow the conditions: circle, light, hold', () => {
    const conditions = { ...usualConditions, 'circle-of-confusion': 0.01, wavelength: 0.00045, stabilisation: 2 };
    const [usual, other] = [block('body-36,ring-24,lens-50'), block('body-36,ring-24,lens-50', [8], conditions)];
    const at8 = usual.columns.find(({ fNumber }) => fNumber === 8)!.values;
    const then = other.columns[0]!.values;
    agree(then.point! / at8.point!, 0.45 / 0.55);
    // A whole depth is almost in proportion to its circle.
    expect(Math.abs(then['depth-of-field']! / at8['depth-of-field']! - 0.5)).toBeLessThan(1e-3);
    expect(then['exposure-time']!).toBeGreaterThan((1.2 * at8['exposure-time']!) / 2);
  });
});

describe('the best f-number', () => {
  it('holds most in one frame, and nothing before it is spoiled', () => {
    const fNumbers = [2.8, 4, 5.6, 8, 11, 16];
    fc.assert(
      fc.property(fc.constantFrom('ring-12', 'ring-24', 'ring-36', 'bellows'), (part) => {
        const { best, columns } = block(`body-36,${part},lens-50`, fNumbers);
        const depths = columns.map(({ values }) => values['subject-depth'] ?? 0);
        expect(depths[best!]).toBe(Math.max(...depths));
        const firstSpoiled = columns.findIndex(({ isSpoiled }) => isSpoiled);
        if (firstSpoiled >= 0) expect(best! <= firstSpoiled).toBe(true);
        expect(columns.every(({ isSpoiled }, at) => isSpoiled === (firstSpoiled >= 0 && at >= firstSpoiled))).toBe(
          true,
        );
      }),
      { seed: 1 },
    );
  });
});

describe('the blocks of a card', () => {
  const plan = { fNumbers: usualFNumbers, conditions: usualConditions };

  it('are set to the magnifications that are asked for, and say which a chain does not reach', () => {
    const found = blocksOf({ ...plan, chains: [chainOf('body-36,ring-24,lens-50')], magnifications: [0.5, 0.6, 2] });
    const blocks = found.filter(isBlock);
    expect(blocks).toHaveLength(2);
    agree(blocks[0]!.magnification, 0.5);
    agree(blocks[1]!.magnification, 0.6);
    expect(found.at(-1)).toMatchObject({
      why: expect.stringMatching(/^It goes from 0\.48× to 0\.63×, so not to 2×\.$/),
    });
  });

  it('stay as they are set where nothing in a chain can be focused', () => {
    const found = blocksOf({
      ...plan,
      chains: [chainOf('body-36,reversing-ring,lens-50:turned')],
      magnifications: [1],
    });
    expect(found).toHaveLength(1);
    expect(isBlock(found[0]!)).toBe(true);
  });

  it('say why a chain gives none, and are numbers or reasons for any chain of the crate', () => {
    expect(blocksOf({ ...plan, chains: [chainOf('body-36,ring-24')], magnifications: [] })).toMatchObject([
      { why: expect.stringContaining('cannot be built') },
    ]);
    const slugs = [...crateThings.keys()].filter((slug) => !slug.startsWith('body-'));
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...slugs), { maxLength: 5 }), fc.boolean(), (parts, isSet) => {
        const chains = [chainOf(['body-36', ...parts].join(','))];
        for (const one of blocksOf({ ...plan, chains, magnifications: isSet ? [1] : [] })) {
          if (!isBlock(one)) expect(one.why).not.toMatch(/NaN|undefined/);
          else {
            expect(one.magnification).toBeGreaterThan(0);
            for (const { values } of one.columns)
              for (const value of Object.values(values)) expect(value).not.toBeNaN();
          }
        }
      }),
      { seed: 1, numRuns: 60 },
    );
  });
});

describe('the words of a card', () => {
  it.each([
    ['body-36,ring-24,lens-50', '24\u202fmm of rings'],
    ['body-36,bellows:e42.5,lens-50', '42.5\u202fmm of bellows'],
    ['body-36,ring-12,bellows:e50,lens-50', '62\u202fmm of rings and bellows'],
  ])('name what holds the lens off: %s', (text, words) => {
    expect(headingOf(block(text, [8]), 'mm')[1].endsWith(`, ${words}`)).toBe(true);
  });

  it('say what is missing to build a chain, once', () => {
    const inFront = chainOf('body-36,lens-50,ring-24');
    expect(misfitsInWords([inFront, inFront, chainOf('body-36,lens-50')])).toMatch(
      /^This does not hold together as it stands\. 24 mm ring goes on a mount, and 50 mm f\/1\.8 has a thread in front\.$/,
    );
    expect(misfitsInWords([chainOf('body-36,ring-24,lens-50')])).toBe('');
  });

  it('ask for a lens where there is none', () => {
    const [found] = blocksOf({
      chains: [chainOf('body-36,close-up-4')],
      magnifications: [],
      fNumbers: [8],
      conditions: usualConditions,
    });
    expect(found).toMatchObject({ why: expect.stringMatching(/\+4 close-up lens: It needs a lens behind it\.$/) });
  });

  it('call no column grey that is boxed', () => {
    const { best, columns } = block('body-36,lens-60', usualFNumbers);
    expect(columns[best!]!.isSpoiled).toBe(true);
    expect(ruleInWords).toMatch(/struck out: not the best, and/);
  });
});

describe('each set of rings', () => {
  const rings = chainOf('body-36,ring-12,ring-24,ring-36').slice(1);

  it('is on once, by length, from none to all', () => {
    const chains = withEachSetOfRings(chainOf('body-36,ring-24,lens-50'), rings, 12);
    const blocks = blocksOf({ chains, magnifications: [], fNumbers: [8], conditions: usualConditions }).filter(isBlock);
    expect(blocks.map(({ extension }) => extension)).toEqual([0, 12, 24, 36, 48, 60, 72]);
    expect(withEachSetOfRings(chainOf('body-36,lens-50'), rings, 3)).toHaveLength(3);
  });
});

describe('each lens', () => {
  it('takes the place of the one in the chain, turned as that is', () => {
    const lenses = ['lens-28', 'lens-90'].map((slug) => ({ thing: crateThings.get(slug)! }));
    const names = (text: string) => withEachLens(chainOf(text), lenses, 9).map(writeChain);
    expect(names('body-36,ring-12,lens-50:f4')).toEqual(['body-36,ring-12,lens-28', 'body-36,ring-12,lens-90']);
    expect(names('body-36,reversing-ring,lens-50:turned')[0]).toBe('body-36,reversing-ring,lens-28:turned');
    expect(names('body-36')).toEqual(['body-36,lens-28', 'body-36,lens-90']);
  });
});
