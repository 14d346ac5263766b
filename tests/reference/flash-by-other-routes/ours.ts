import { ambientShare } from '#core/exposure/ambient-share.formula.ts';
import { ambientUnderexposure } from '#core/exposure/ambient-underexposure.formula.ts';
import { backgroundUnderexposure } from '#core/exposure/background-underexposure.formula.ts';
import { flashUnderexposure } from '#core/exposure/flash-underexposure.formula.ts';
import { shareBehindCurtain } from '#core/exposure/shutter-with-flash.ts';
import type { Answer } from '#tests/support/reference-case.ts';

type Given =
  | { flashDistance: number; backgroundDistance: number }
  | { exposureTime: number; syncSpeed: number }
  | { effectiveFNumber: number; flashEffectiveFNumber: number; neededTime: number; shutterTime: number };

export function ours(given: Given): Answer {
  if ('backgroundDistance' in given) return { backgroundUnderexposure: backgroundUnderexposure(given) };
  if ('syncSpeed' in given) return { covered: shareBehindCurtain(given) };
  const short = ambientUnderexposure({ ambientExposureTime: given.neededTime, shutterExposureTime: given.shutterTime });
  return {
    flashUnderexposure: flashUnderexposure(given),
    ambientUnderexposure: short,
    ambientShare: ambientShare({ ambientUnderexposure: short }),
  };
}
