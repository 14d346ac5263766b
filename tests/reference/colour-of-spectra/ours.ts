import { tableRange, towardsX, towardsY, towardsZ } from '#core/light/cie-1931.ts';
import { encodedSrgb, linearSrgb } from '#core/light/srgb.ts';
import { tristimulus, type Tristimulus } from '#core/light/tristimulus.ts';
import { oursById } from '#tests/support/reference-case.ts';

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

const valuesOf =
  (table: readonly number[]) =>
  ({ wavelength }: { wavelength: number[] }) => ({
    value: wavelength.map((each) => table[Math.round((each * 1e6 - tableRange.first) / tableRange.step)] as number),
  });

const onScreen = ({ tristimulus: colour }: { tristimulus: Tristimulus }) => {
  const linear = linearSrgb(colour);
  return { linear, encoded: encodedSrgb(linear) };
};

export const ours = oursById({
  'cie-sums': () => ({ sum: [towardsX, towardsY, towardsZ].map(sum) }),
  'cie-d65': () => {
    const [x, y, z] = tristimulus(() => 1);
    return { x: x / (x + y + z), y: y / (x + y + z) };
  },
  'wyman-x': valuesOf(towardsX),
  'wyman-y': valuesOf(towardsY),
  'wyman-z': valuesOf(towardsZ),
  'culori-green': onScreen,
  'culori-red': onScreen,
  'culori-blue': onScreen,
  'culori-outside': ({ tristimulus: colour }: { tristimulus: Tristimulus }) => ({ linear: linearSrgb(colour) }),
});
