import { exposureTimeFromLuminance } from '#core/exposure/exposure-time-from-luminance.formula.ts';
import { isoFromLuminance } from '#core/exposure/iso-from-luminance.formula.ts';
import { luminousExposure } from '#core/exposure/luminous-exposure.ts';
import { meteredLuminance } from '#core/exposure/metered-luminance.formula.ts';
import {
  agreedReflectance,
  domeReceptorConstants,
  flatReceptorConstants,
  reflectedLightConstants,
} from '#core/exposure/metering-constants.ts';
import { oursById } from '#tests/support/reference-case.ts';

const constants = { reflected: reflectedLightConstants, flat: flatReceptorConstants, dome: domeReceptorConstants };

const rangeOf = ({ which }: { which: keyof typeof constants }) => {
  const { least, most, common } = constants[which];
  return { range: [least, most], common };
};

export const ours = oursById({
  'iso-2720-k': rangeOf,
  'iso-2720-c-flat': rangeOf,
  'iso-2720-c-dome': rangeOf,
  'sunny-16-luminance': (meter: { effectiveFNumber: number; iso: number; reflectedLightConstant: number }) => ({
    luminance: meteredLuminance({ ...meter, exposureTime: 1 / meter.iso }),
  }),
  'sunny-16-turned': (meter: Parameters<typeof exposureTimeFromLuminance>[0]) => {
    const time = exposureTimeFromLuminance(meter);
    return { time, index: isoFromLuminance({ ...meter, exposureTime: time }) };
  },
  'meter-sensor-exposure': (surface: { luminance: number; effectiveFNumber: number; iso: number }) => ({
    perSecond: luminousExposure({ ...surface, exposureTime: 1 }),
    exposure: luminousExposure({ ...surface, exposureTime: 1 / surface.iso }),
  }),
  'meters-agree': ({ reflected, incident }: { reflected: number; incident: number }) => ({
    reflectance: agreedReflectance(reflected, incident),
  }),
});
