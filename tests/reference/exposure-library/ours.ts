import { exposureTimeFromIlluminance } from '#core/exposure/exposure-time-from-illuminance.formula.ts';
import { exposureTimeFromLuminance } from '#core/exposure/exposure-time-from-luminance.formula.ts';
import { isoFromLuminance } from '#core/exposure/iso-from-luminance.formula.ts';
import { lightValue } from '#core/exposure/light-value.formula.ts';
import { lensFactor, luminousExposure, type ExposedSurface } from '#core/exposure/luminous-exposure.ts';
import { meteredLuminance } from '#core/exposure/metered-luminance.formula.ts';
import { midToneAtIso1, saturationExposure } from '#core/exposure/photons.ts';
import { oursById } from '#tests/support/reference-case.ts';

type Turned = Parameters<typeof exposureTimeFromLuminance>[0] & Parameters<typeof isoFromLuminance>[0];
type Flared = ExposedSurface & { flare: number };

const withFlare = (surface: Flared) => luminousExposure(surface) + surface.flare;

export const ours = oursById({
  'library-luminance': (given: Parameters<typeof meteredLuminance>[0]) => ({ luminance: meteredLuminance(given) }),
  'library-luminance-turned': (given: Turned) => ({
    time: exposureTimeFromLuminance(given),
    index: isoFromLuminance(given),
  }),
  'library-illuminance': (given: Parameters<typeof exposureTimeFromIlluminance>[0]) => ({
    exposureTime: exposureTimeFromIlluminance(given),
  }),
  'library-light-value': (given: Parameters<typeof lightValue>[0]) => ({ lightValue: lightValue(given) }),
  'library-lens-factor': () => ({ factor: lensFactor }),
  'library-mean-exposure': (surface: ExposedSurface) => ({ exposure: luminousExposure(surface) }),
  'library-flare-exposure': (surface: Flared) => ({ exposure: withFlare(surface) }),
  'library-saturation': (surface: Flared & { iso: number }) => ({
    share: withFlare(surface) / saturationExposure(surface.iso),
  }),
  'library-exposure-index': ({ exposure }: { exposure: number }) => ({ index: midToneAtIso1 / exposure }),
});
