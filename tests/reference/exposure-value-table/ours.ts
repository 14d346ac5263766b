import { exposureTimeFromIlluminance } from '#core/exposure/exposure-time-from-illuminance.formula.ts';
import { exposureValue } from '#core/exposure/exposure-value.formula.ts';
import { lightValue } from '#core/exposure/light-value.formula.ts';
import { meteredLuminance } from '#core/exposure/metered-luminance.formula.ts';
import { exposureTimeOfTimeValue } from '#core/exposure/stops.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Table {
  lightValue: readonly number[];
  constant: number;
}

const settings = { effectiveFNumber: 1, iso: 100 };

/** f/1 and so many stops from 1 s: settings of that light value. */
function timeFor(value: number): number {
  const exposureTime = exposureTimeOfTimeValue(value);
  if (Math.abs(lightValue({ ...settings, exposureTime }) - value) > 1e-9)
    throw new Error(`not the light value ${value}`);
  return exposureTime;
}

interface Pairs {
  readonly fNumbers: readonly number[];
  readonly perSecond: readonly number[];
  readonly iso: readonly number[];
}

/** The exposure value of each pair; the light value of the last at each ISO. */
const valuesOf = ({ fNumbers, perSecond, iso }: Pairs) => {
  const pairs = fNumbers.map((effectiveFNumber, index) => ({ effectiveFNumber, exposureTime: 1 / perSecond[index]! }));
  return {
    exposureValues: pairs.map(exposureValue),
    lightValues: iso.map((speed) => lightValue({ ...pairs.at(-1)!, iso: speed })),
  };
};

export const ours = oursById({
  'settings-of-value-13': valuesOf,
  'settings-of-value-15': valuesOf,
  'ev-luminance': ({ lightValue: values, constant }: Table) => ({
    luminance: values.map((value) =>
      meteredLuminance({ ...settings, exposureTime: timeFor(value), reflectedLightConstant: constant }),
    ),
  }),
  // Illuminance and time go against each other, so the time for one lux over the time set is the illuminance in lux.
  'ev-illuminance': ({ lightValue: values, constant }: Table) => ({
    illuminance: values.map(
      (value) =>
        exposureTimeFromIlluminance({ ...settings, illuminance: 1, incidentLightConstant: constant }) / timeFor(value),
    ),
  }),
});
