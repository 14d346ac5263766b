import { printQuantity } from '#core/quantity/print.ts';
import { reworked, type Route } from './route.ts';
import type { Slip } from './slip.ts';

/** Focal lengths of tube lenses that objectives are made for, mm: common practice, from memory. */
const soldTubes = [164.5, 180, 200] as const;

/** What comes out on the way of *route* where the converter is forgotten, or where an objective is taken as if its own tube lens stood behind it. */
export const partsLeftOut = (route: Route): readonly Slip[] => [...withoutConverter(route), ...onAnotherTube(route)];

function withoutConverter(route: Route): readonly Slip[] {
  const { steps, known, to, value } = route;
  const factor = known['converter-factor'];
  const isBehind = steps.some(({ by }) => by.setUp === 'ring behind the converter');
  if (factor === undefined || isBehind) return [];
  // Both are so many times larger with it.
  const enlarged = ['magnification', 'effective-f-number'] as const;
  const less = enlarged.filter((id) => steps.some(({ by, gives }) => gives === id && takesFactor(by.formula.from)));
  const isLoss = to === 'light-loss' && takesFactor(steps.at(-1)?.by.formula.from ?? []);
  const instead = Object.fromEntries(less.map((id) => [id, known[id]! / factor]));
  const without = isLoss
    ? value - 2 * Math.log2(factor)
    : less.length > 0
      ? reworked(route, instead)?.value
      : undefined;
  if (without === undefined) return [];
  const times = printQuantity('converter-factor', factor);
  const because = `That leaves out the converter. It makes the picture ${times} as large, and the f-number at the sensor as well.`;
  return [{ id: 'converter-left-out', value: without, because, tier: 2 }];
}

const takesFactor = (from: readonly string[]) => from.includes('converter-factor');

function onAnotherTube(route: Route): readonly Slip[] {
  const { known, steps } = route;
  const {
    'objective-magnification': engraved,
    'tube-focal-length': tube,
    'focal-length': focalLength,
    magnification,
  } = known;
  if (!steps.some(({ by }) => by.formula.from.includes('tube-focal-length' as never))) return [];
  if (engraved === undefined || tube === undefined || focalLength === undefined || magnification === undefined)
    return [];
  const slip = (id: string, size: number, because: string, more: Pick<Slip, 'tier' | 'instead'>): readonly Slip[] => {
    const value = reworked(route, { magnification: size })?.value;
    return value === undefined ? [] : [{ id, value, because, ...more }];
  };
  const printed = printQuantity('tube-focal-length', tube);
  const others = soldTubes.filter((one) => one !== tube);
  const takesEngraved = `That takes the engraved ${printQuantity('objective-magnification', engraved)}, which holds on ${printed}. Here ${printQuantity('focal-length', focalLength)} stand behind the objective.`;
  const isSold = others.some((one) => one === focalLength);
  return [
    ...(isSold ? [] : slip('engraved', engraved, takesEngraved, { tier: 2 })),
    ...slip(
      'tube-upside-down',
      (engraved * tube) / focalLength,
      'That divides the two lenses the other way: a longer lens behind the objective makes the picture larger.',
      { tier: 2 },
    ),
    ...others.flatMap((other) =>
      slip(
        `tube-${other}`,
        (engraved * focalLength) / other,
        `That is right for an objective made for ${printQuantity('tube-focal-length', other)}.`,
        { tier: 3, instead: 'tube-focal-length' },
      ),
    ),
  ];
}
