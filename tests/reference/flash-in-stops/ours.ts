import { ambientUnderexposure } from '#core/exposure/ambient-underexposure.formula.ts';
import { backgroundUnderexposure } from '#core/exposure/background-underexposure.formula.ts';
import { effectiveFNumberFromGuideNumber } from '#core/exposure/effective-f-number-from-guide-number.formula.ts';
import { flashUnderexposure } from '#core/exposure/flash-underexposure.formula.ts';
import { shutterTimeWithFlash } from '#core/exposure/shutter-with-flash.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Behind {
  flashDistance: number;
  backgroundDistance: number;
}

const asRatio = (given: Behind) => ({ lightRatio: 2 ** backgroundUnderexposure(given) });

export const ours = oursById({
  'shifted-by-10-cm': asRatio,
  'lamp-30-to-90-cm': asRatio,
  'bulb-5-to-10-m': asRatio,
  'four-times-as-far': (given: Behind) => ({ backgroundUnderexposure: backgroundUnderexposure(given) }),
  'flash-measured-at-1-m': (given: {
    guideNumber: number;
    flashDistances: readonly number[];
    effectiveFNumber: number;
  }) => {
    const flashFNumbers = given.flashDistances.map((flashDistance) =>
      effectiveFNumberFromGuideNumber({ guideNumber: given.guideNumber, iso: 100, flashPower: 1, flashDistance }),
    );
    return {
      flashFNumbers,
      flashUnderexposures: flashFNumbers.map((flashEffectiveFNumber) =>
        flashUnderexposure({ effectiveFNumber: given.effectiveFNumber, flashEffectiveFNumber }),
      ),
    };
  },
  'half-as-strong': (given: { effectiveFNumber: number; flashEffectiveFNumber: number }) => ({
    flashUnderexposure: flashUnderexposure(given),
  }),
  'sync-against-bright-light': ({ neededTime, syncSpeed }: { neededTime: number; syncSpeed: number }) => ({
    ambientUnderexposure: ambientUnderexposure({
      ambientExposureTime: neededTime,
      shutterExposureTime: shutterTimeWithFlash({ exposureTime: neededTime, syncSpeed }),
    }),
  }),
});
