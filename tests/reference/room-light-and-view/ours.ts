import { backgroundBlur } from '#core/depth/background-blur.formula.ts';
import { backgroundWidth } from '#core/depth/background-width.formula.ts';
import { focalLengthForWorkingDistance } from '#core/gaussian/focal-length-for-working-distance.formula.ts';
import { lensShadow } from '#core/light/lens-shadow.formula.ts';

type Room = Parameters<typeof focalLengthForWorkingDistance>[0];
type Rim = Parameters<typeof lensShadow>[0];
type Behind = Parameters<typeof backgroundBlur>[0] & Parameters<typeof backgroundWidth>[0];

export function ours(given: Room | Rim | Behind) {
  if ('rimDiameter' in given) return { lensShadow: lensShadow(given) };
  if ('workingDistance' in given) return { focalLength: focalLengthForWorkingDistance(given) };
  return { backgroundWidth: backgroundWidth(given), backgroundBlur: backgroundBlur(given) };
}
