import { exposureValue } from '#core/exposure/exposure-value.formula.ts';
import { apertureValue, timeValue } from '#core/exposure/stops.ts';
import { exactFNumber, exactShutterTime, nominalFNumber, nominalShutterTime } from '#core/quantity/nominal.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Apertures {
  marked: readonly number[];
}

interface Times {
  markedTime: readonly number[];
}

/** An exact value, which every mark of the series must have. */
function known(value: number | undefined): number {
  if (value === undefined) throw new Error('not a mark of the series');
  return value;
}

const exact = ({ marked }: Apertures) => marked.map((mark) => known(exactFNumber(mark)));
const exactTimes = ({ markedTime }: Times) => markedTime.map((mark) => known(exactShutterTime(mark)));

/** Stops from f/1, and stops from 1 s: the aperture value and the time value of APEX and Exif. */
const apertureValues = (given: Apertures) => exact(given).map(apertureValue);
const timeValues = (given: Times) => exactTimes(given).map(timeValue);

const markedThirds = ({ thirdsFromOne }: { thirdsFromOne: readonly number[] }) => ({
  marked: thirdsFromOne.map((thirds) => nominalFNumber(2 ** (thirds / 6))),
});

export const ours = oursById({
  'f-value-table': (given: Apertures) => ({ exact: exact(given) }),
  'ss0508-exact': (given: Apertures) => ({ exact: exact(given) }),
  'third-stop-f-numbers': markedThirds,
  'third-stops-from-2.8': markedThirds,
  'whole-stops': markedThirds,
  'iso-516-times': (given: Times) => ({ exactTime: exactTimes(given) }),
  'apex-table': (given: Apertures & Times) => ({ apertureValue: apertureValues(given), timeValue: timeValues(given) }),
  'exposure-values': (given: Apertures & Times) => {
    const times = exactTimes(given);
    return {
      exposureValue: exact(given).map((effectiveFNumber, index) =>
        exposureValue({ effectiveFNumber, exposureTime: times[index]! }),
      ),
    };
  },
  'exif-aperture-value': (given: Apertures) => ({ apertureValue: apertureValues(given) }),
  'exif-shutter-speed-value': (given: Times) => ({ timeValue: timeValues(given) }),
  'camera-protocol-times': ({ thirdsBelowOne }: { thirdsBelowOne: readonly number[] }) => ({
    markedTime: thirdsBelowOne.map((thirds) => nominalShutterTime(2 ** (-thirds / 3))),
  }),
});
