import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { camera, lens28, lens50, on, ring } from '#tests/support/rig-parts.ts';
import { assembleRig } from './assemble.ts';
import { ImpossibleChain } from './impossible-chain.ts';
import type { Part } from './part.ts';

const converter: Part = { part: 'converter', converterFactor: 2, converterLength: 40, registerDistance: 44 };
const closeUp: Part = { part: 'close-up lens', closeUpPower: 4 };
const tubeLens: Part = { part: 'tube lens', focalLength: 200 };
const bellows: Part = { part: 'bellows', extension: 100, shortest: 50, longest: 150 };
const objective: Part = {
  part: 'objective',
  objectiveMagnification: 10,
  numericalAperture: 0.25,
  workingDistance: 10,
  design: { tubeFocalLength: 200 },
  parfocalDistance: 45,
};
const reversed = on(lens28, { reversed: true });

describe('a chain that cannot be built', () => {
  const impossible: readonly [string, Part[], number, RegExp][] = [
    ['nothing at all', [], 0, /starts with its camera/],
    ['a lens first', [on(lens50), camera], 0, /starts with its camera/],
    ['two cameras', [camera, on(lens50), camera], 2, /one camera/],
    ['no lens', [camera, ring(12)], 1, /needs a lens/],
    ['a converter alone', [camera, converter], 1, /needs a lens in front/],
    ['a converter in front of the lens', [camera, on(lens50), converter], 2, /behind the lens, not in front/],
    ['bellows in front of the lens', [camera, on(lens50), bellows], 2, /between camera and lens/],
    ['a second lens that is not reversed', [camera, on(lens50), on(lens28)], 2, /front to front/],
    ['a lens before one turned round', [camera, reversed, reversed], 2, /no thread in front/],
    ['a third lens', [camera, on(lens50), reversed, reversed], 3, /third lens/],
    ['a lens before a close-up lens', [camera, closeUp, on(lens50)], 2, /in front of the lens, not behind/],
    ['a tube lens before a lens', [camera, on(lens50), tubeLens], 2, /first glass/],
    ['a camera lens before a tube lens', [camera, tubeLens, on(lens50)], 2, /comes an objective/],
    ['an objective on a lens turned round', [camera, reversed, objective], 2, /right way round/],
    ['an objective on a close-up lens', [camera, on(lens50), closeUp, objective], 3, /not on a close-up lens/],
    ['two objectives', [camera, objective, objective], 2, /one objective/],
    ['a lens before an objective', [camera, objective, reversed], 2, /nothing goes in front/],
    ['a close-up lens before an objective', [camera, objective, closeUp], 2, /nothing goes in front/],
    ['a tube lens alone', [camera, ring(200), tubeLens], 2, /nothing limits the light/],
  ];

  it.each(impossible)('is refused with the part and the reason: %s', (_, parts, index, reason) => {
    const attempt = () => assembleRig(parts);
    expect(attempt).toThrow(ImpossibleChain);
    expect(attempt).toThrow(reason);
    expect(attempt).toThrow(expect.objectContaining({ index }));
  });

  const possible: readonly [string, Part[]][] = [
    ['rings and bellows behind a lens', [camera, ring(12), bellows, ring(20), on(lens50)]],
    ['converters, one behind the other', [camera, converter, converter, ring(25), on(lens50)]],
    ['close-up lenses in a stack', [camera, on(lens50), closeUp, closeUp]],
    ['a second lens reversed on a first', [camera, on(lens50), ring(3), reversed]],
    ['a close-up lens on a lens turned round', [camera, reversed, closeUp]],
    ['an objective on a lens', [camera, on(lens50), objective]],
    ['an objective on a tube', [camera, ring(106), objective]],
    [
      'a close-up lens with a hole, as a lens of its own',
      [camera, ring(300), { ...closeUp, clearAperture: 8 } as Part],
    ],
  ];
  it.each(possible)('is none of these: %s', (_, parts) => {
    expect(assembleRig(parts).elements.length).toBeGreaterThan(0);
  });
});

describe('numbers that no part has', () => {
  const wrong: readonly [string, Part[]][] = [
    ['register-distance is 0', [{ ...camera, registerDistance: 0 } as Part, on(lens50)]],
    ['sensor-width is -1', [{ ...camera, sensorWidth: -1 } as Part, on(lens50)]],
    ['sensor-height is NaN', [{ ...camera, sensorHeight: NaN } as Part, on(lens50)]],
    ['extension is -1', [camera, ring(-1), on(lens50)]],
    ['extension is 200', [camera, { ...bellows, extension: 200 } as Part, on(lens50)]],
    ['converter-factor is 1', [camera, { ...converter, converterFactor: 1 } as Part, on(lens50)]],
    ['f-number is 0', [camera, on(lens50, { fNumber: 0 })]],
    ['focus-magnification is 0.2', [camera, on(lens50, { at: 0.2 })]],
    ['focus-magnification is -0.1', [camera, on(lens50, { at: -0.1 })]],
    ['focal-length is 0', [camera, on({ ...lens50, focalLength: 0 })]],
    ['front-principal-depth is -3', [camera, on({ ...lens50, frontPrincipalDepth: -3 })]],
    ['pupil-magnification is 0', [camera, on({ ...lens50, pupilMagnification: 0 })]],
    ['numerical-aperture is 1.4', [camera, { ...objective, numericalAperture: 1.4 } as Part]],
    ['close-up-power is Infinity', [camera, on(lens50), { part: 'close-up lens', closeUpPower: Infinity }]],
    ['extension is -1', [camera, on(lens50), { ...closeUp, seat: -1 } as Part]],
    ['entrance-pupil is 0', [camera, on(lens50), { ...closeUp, clearAperture: 0 } as Part]],
  ];
  it.each(wrong)('are refused by name: %s', (name, parts) => {
    expect(() => assembleRig(parts)).toThrow(OutOfRange);
    expect(() => assembleRig(parts)).toThrow(name);
  });

  it('are refused where a converter by its cardinal points gathers light', () => {
    const gathering: Part = {
      part: 'converter by points',
      focalLength: 80,
      principalSeparation: 2,
      frontPrincipalDepth: 3,
      converterLength: 40,
    };
    expect(() => assembleRig([camera, gathering, on(lens50)])).toThrow(/focal-length is 80/);
  });
});
