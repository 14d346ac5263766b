import { lightValue } from '#core/exposure/light-value.formula.ts';
import { apertureValue, exposureTimeOfTimeValue, fNumberOfApertureValue, timeValue } from '#core/exposure/stops.ts';
import { oursById } from '#tests/support/reference-case.ts';

type Numbers = readonly number[];

export const ours = oursById({
  'light-value-exiftool': (shots: { fNumber: Numbers; exposureTime: Numbers; iso: Numbers }) => ({
    lightValue: shots.fNumber.map((effectiveFNumber, index) =>
      lightValue({ effectiveFNumber, exposureTime: shots.exposureTime[index]!, iso: shots.iso[index]! }),
    ),
  }),
  'stored-f-number': ({ apertureValue: stops }: { apertureValue: Numbers }) => ({
    fNumber: stops.map(fNumberOfApertureValue),
    backAgain: stops.map(fNumberOfApertureValue).map(apertureValue),
  }),
  'stored-time': ({ timeValue: stops }: { timeValue: Numbers }) => ({
    exposureTime: stops.map(exposureTimeOfTimeValue),
    backAgain: stops.map(exposureTimeOfTimeValue).map(timeValue),
  }),
});
