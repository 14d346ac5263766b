import { describe, expect, it } from 'vitest';
import { placedChain } from '#site/bench/placed.ts';
import { withThing } from '#site/bench/with-thing.ts';
import { textOfChain } from './chain-in-text.ts';
import type { Chain } from './chain.ts';
import { readChain } from './chain-text.ts';
import { misfitsOf } from './fit.ts';
import { otherRegister } from './registers.ts';

const camera = (register: number, mount = '') =>
  `my-camera:sensor-width=36:sensor-height=24:register-distance=${register}${mount && `:mount=${mount}`}`;
const ring = (extension: number) => `my-ring:extension=${extension}:contacts=no`;
const lens = (register: number, mount = '') =>
  `my-lens:name=my_50:focal-length=50:max-aperture=2:focus-magnification=0.15:focusing=whole:iris=lens:register-distance=${register}${mount && `:mount=${mount}`}`;

const chainOf = (text: string): Chain => {
  const { chain, notices } = readChain(text);
  expect(notices).toEqual([]);
  return chain;
};
const bare = (words: string | undefined) => words?.replaceAll('\u202f', ' ');
const magnification = (chain: Chain) => {
  const placed = placedChain(chain);
  if (placed.kind !== 'built') throw new Error(placed.why);
  const { solved } = placed.positions;
  return 'magnification' in solved ? solved.magnification : undefined;
};

describe('a lens on a camera of the same register', () => {
  it.each([
    'body-36,ring-24,lens-50',
    `${camera(44.04)},${lens(44)}`,
    `${camera(20)},reversing-ring,${lens(44)}:turned`,
    `${camera(20)},${ring(24)},${lens(44)}`,
    `${camera(20)},converter-2,${ring(24)},${lens(44)}`,
    `${camera(20)},bellows,my-tube-lens:tube-focal-length=200,objective-4`,
  ])('and what has its adapter is not spoken of: %s', (text) => {
    expect(otherRegister(chainOf(text))?.words ?? '').toBe('');
  });
});

describe('a lens on a camera of another register', () => {
  it.each([
    [
      `${camera(20)},lens-50`,
      '50 mm f/1.8 is made for a register of 44 mm. On this camera, which has 20 mm, it needs an adapter of 24 mm: now it stands 24 mm too near the sensor.',
    ],
    [`${camera(20)},${ring(10)},${lens(44)}`, /needs an adapter of 24 mm: now it stands 14 mm too near the sensor\.$/],
    [
      `${camera(20)},ring-24,lens-50`,
      '50 mm f/1.8 is made for a register of 44 mm, and this camera has 20 mm: 24 mm of what is between them are no more than the adapter that it needs. Nothing is left to bring it closer.',
    ],
    [
      `${camera(20)},${ring(12)},bellows:e60,${lens(44)}`,
      /24 mm of what is between.* 48 mm are left to bring it closer\.$/,
    ],
    [`${camera(20)},${ring(24)},converter-2,${lens(44)}`, /now it stands 24 mm too near the sensor/],
    [
      `${camera(44)},${lens(20)}`,
      'my 50 is made for a register of 20 mm, and this camera has 44 mm: it stands 24 mm too far out, as if on a ring, and cannot focus far. No adapter without glass brings it nearer.',
    ],
  ])('is told what that makes of it: %s', (text, words) => {
    expect(bare(otherRegister(chainOf(text))?.words)).toMatch(words);
  });

  it.each([
    `${camera(20)},${lens(44)}`,
    `${camera(20)},${ring(10)},${lens(44)}`,
    `${camera(20)},ring-24,${lens(44)}`,
    `${camera(20)},converter-2,${lens(44)}`,
    `${camera(18.1)},${lens(45.46)}`,
  ])('and its adapter gives what a camera of its own register gives: %s', (text) => {
    const chain = chainOf(text);
    const { adapter } = otherRegister(chain)!;
    const helped = withThing(chain, adapter!.thing, adapter!.at).chain;
    expect(otherRegister(helped)?.words).toBe('');
    // What an address says of it is read back as the same.
    expect(textOfChain(chainOf(textOfChain(helped)))).toBe(textOfChain(helped));
    if (text.includes('converter')) return;
    const own = chainOf(
      text.replace(/register-distance=[\d.]+/, `register-distance=${text.includes('45.46') ? 45.46 : 44}`),
    );
    expect(magnification(helped)).toBeCloseTo(magnification(own)!, 10);
  });

  it('has no adapter for one that stands too far out', () => {
    expect(otherRegister(chainOf(`${camera(44)},${lens(20)}`))?.adapter).toBeUndefined();
  });

  it('of another mount has that said once, and not at all with the adapter', () => {
    const chain = chainOf(`${camera(20, 'A')},${lens(44, 'B')}`);
    const [said, ...more] = misfitsOf(chain);
    expect(more).toEqual([]);
    expect(said!.words).toMatch(/needs an adapter of/);
    expect(misfitsOf(withThing(chain, said!.adapter!.thing, said!.adapter!.at).chain)).toEqual([]);
    expect(misfitsOf(chainOf(`${camera(44, 'A')},${lens(44, 'B')}`))[0]!.words).toMatch(/another mount/);
  });
});
