import { describe, expect, it } from 'vitest';
import { readChain } from './chain-text.ts';
import { misfitsOf } from './fit.ts';

const misfits = (text: string) => misfitsOf(readChain(text).chain).map(({ at, words }) => `${at} ${words}`);

const tubed =
  'my-finite-objective:name=old_ten:objective-magnification=10:numerical-aperture=0.25:working-distance=6.5:tube-length=160';

describe('what holds on what', () => {
  it.each([
    'body-36,ring-24,lens-50,close-up-4',
    'body-36,bellows,reversing-ring,lens-28:turned',
    'body-36,converter-2,lens-100,coupling-ring,lens-50:turned',
    'body-36,lens-200:far,objective-4',
    `body-36,bellows,${tubed}`,
    `body-36,bellows,my-tube-lens:tube-focal-length=200,objective-4`,
  ])('is said of nothing that fits: %s', (text) => {
    expect(misfits(text)).toEqual([]);
  });

  it.each([
    ['body-36,lens-28:turned', /^1 28 mm f\/2\.8, manual, turned round, needs a reversing ring/],
    ['body-36,lens-100,lens-50:turned', /^2 50 mm f\/1\.8, turned round, needs a coupling ring/],
    ['body-36,reversing-ring,lens-28', /^2 28 mm .* goes on a mount, and reversing ring has a thread in front/],
    ['body-36,close-up-4,lens-50', /^1 \+4 close-up lens goes into the thread in front of a lens/],
    [
      'body-36,objective-10',
      /^1 10×\/0\.25 objective goes on an adapter in the thread in front of a lens, and 36 × 24 mm.* has none there/,
    ],
    ['body-36,objective-10', /none there: made for parallel light, it needs a tube lens behind it/],
    [`body-36,lens-50,${tubed}`, /^2 old ten forms its picture by itself, at the end of a tube/],
    [`body-36,my-tube-lens:tube-focal-length=200,${tubed}`, /^2 old ten forms/],
    ['body-36,my-tube-lens:tube-focal-length=200,lens-50', /^2 50 mm f\/1\.8 goes on a mount, and tube lens has none/],
    ['body-36,ring-24,objective-10', /^2 .* 24 mm ring has none there/],
    ['body-36,reversing-ring,lens-50:turned,objective-4', /^3 .* has none there/],
    [
      'my-camera:sensor-width=36:sensor-height=24:register-distance=44:mount=A,my-ring:extension=12:contacts=no:mount=B',
      /another mount/,
    ],
  ])('is said where something is missing: %s', (text, words) => {
    expect(misfits(text)[0]).toMatch(words);
  });
});
