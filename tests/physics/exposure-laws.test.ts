import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ambientShare } from '#core/exposure/ambient-share.formula.ts';
import { electrons } from '#core/exposure/electrons.formula.ts';
import { exposureTimeFromLuminance } from '#core/exposure/exposure-time-from-luminance.formula.ts';
import { fNumberForFlash } from '#core/exposure/f-number-for-flash.formula.ts';
import { flashPowerForFNumber } from '#core/exposure/flash-power-for-f-number.formula.ts';
import { illuminanceByInverseSquare } from '#core/exposure/illuminance-by-inverse-square.formula.ts';
import { illuminanceFromDisc } from '#core/exposure/illuminance-from-disc.formula.ts';
import { isoFromLuminance } from '#core/exposure/iso-from-luminance.formula.ts';
import { keeperShare } from '#core/exposure/keeper-share.formula.ts';
import { lightValue } from '#core/exposure/light-value.formula.ts';
import { signalToNoise } from '#core/exposure/signal-to-noise.formula.ts';
import { slowestExposureTime } from '#core/exposure/slowest-exposure-time.formula.ts';
import { timeForLightLoss } from '#core/exposure/stops.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { lightLoss } from '#core/gaussian/light-loss.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { lenses } from '#tests/support/lenses.ts';
import { quantities } from '#tests/support/sample.ts';

const rounding = { relative: 1e-12, because: 'a few roundings, logarithms and powers among them' };
const more = fc.double({ min: 1.001, max: 10, noNaN: true });

function everywhere(
  ids: Parameters<typeof quantities>[0],
  law: (values: Record<string, number>, factor: number) => void,
) {
  fc.assert(fc.property(quantities(ids), more, law), { seed: 71, numRuns: 500 });
}

describe('metering', () => {
  it('asks as much more time for a lens racked out as its light loss says', () => {
    fc.assert(
      fc.property(lenses, quantities(['luminance', 'iso']), (lens, light) => {
        const meter = { luminance: light.luminance!, iso: light.iso!, reflectedLightConstant: 12.5 };
        const cone = effectiveFNumber(lens);
        const exposureTime = exposureTimeFromLuminance({ ...meter, effectiveFNumber: lens.fNumber });
        const loss = lightLoss({ fNumber: lens.fNumber, effectiveFNumber: cone });
        expect(timeForLightLoss({ exposureTime, lightLoss: loss })).toEqual(
          closeTo(exposureTimeFromLuminance({ ...meter, effectiveFNumber: cone }), rounding),
        );
      }),
      { seed: 72, numRuns: 500 },
    );
  });

  it('tells the same light value from whatever settings suit a surface', () => {
    everywhere(['luminance', 'iso', 'effective-f-number'], ({ luminance, iso, ...rest }, factor) => {
      const lit = { luminance: luminance!, reflectedLightConstant: 12.5 };
      const told = (speed: number, cone: number) => {
        const settings = { iso: speed, effectiveFNumber: cone };
        return lightValue({ ...settings, exposureTime: exposureTimeFromLuminance({ ...lit, ...settings }) });
      };
      const cone = rest['effective-f-number']!;
      const absolute = { absolute: 1e-11, because: 'logarithms of numbers up to 1e15' };
      expect(told(iso! * factor, cone / factor)).toEqual(closeTo(told(iso!, cone), absolute));
      expect(told(iso!, cone)).toEqual(closeTo(Math.log2(8 * luminance!), absolute));
    });
  });

  it('gives back the ISO that a time was found for', () => {
    everywhere(['luminance', 'iso', 'effective-f-number'], ({ luminance, iso, ...rest }) => {
      const given = {
        luminance: luminance!,
        effectiveFNumber: rest['effective-f-number']!,
        reflectedLightConstant: 14,
      };
      const exposureTime = exposureTimeFromLuminance({ ...given, iso: iso! });
      expect(isoFromLuminance({ ...given, exposureTime })).toEqual(closeTo(iso!, rounding));
    });
  });
});

describe('flash', () => {
  it('wants the power back that a marked f-number was found for, through any loss of light', () => {
    everywhere(['guide-number', 'iso', 'flash-power', 'flash-distance', 'light-loss'], (values) => {
      const flash = {
        guideNumber: values['guide-number']!,
        iso: values.iso!,
        flashDistance: values['flash-distance']!,
      };
      const lightLost = values['light-loss']!;
      const fNumber = fNumberForFlash({ ...flash, flashPower: values['flash-power']!, lightLoss: lightLost });
      const power = flashPowerForFNumber({ ...flash, effectiveFNumber: fNumber * 2 ** (lightLost / 2) });
      expect(power).toEqual(closeTo(values['flash-power']!, rounding));
    });
  });

  it('and the light already there make a whole, whichever is the brighter', () => {
    everywhere(['ambient-underexposure'], (values) => {
      const below = values['ambient-underexposure']!;
      const both = ambientShare({ ambientUnderexposure: below }) + ambientShare({ ambientUnderexposure: -below });
      expect(both).toEqual(closeTo(1, rounding));
    });
  });
});

describe('a disc of light', () => {
  it('gives less from farther away, more if it is broader, and never what the inverse square law promises', () => {
    everywhere(['luminance', 'source-size', 'flash-distance'], (values, factor) => {
      const disc = {
        luminance: values.luminance!,
        sourceSize: values['source-size']!,
        flashDistance: values['flash-distance']!,
      };
      const here = illuminanceFromDisc(disc);
      expect(illuminanceFromDisc({ ...disc, flashDistance: disc.flashDistance * factor })).toBeLessThan(here);
      expect(illuminanceFromDisc({ ...disc, sourceSize: disc.sourceSize * factor })).toBeGreaterThan(here);
      expect(here).toBeLessThanOrEqual(illuminanceByInverseSquare(disc));
      expect(here).toBeLessThanOrEqual(Math.PI * disc.luminance * (1 + 1e-15));
    });
  });

  it('keeps within a hundredth of the inverse square law from five diameters on', () => {
    everywhere(['luminance', 'source-size'], (values, factor) => {
      const disc = { luminance: values.luminance!, sourceSize: values['source-size']! };
      const far = { ...disc, flashDistance: 5 * disc.sourceSize * factor };
      expect(illuminanceByInverseSquare(far) / illuminanceFromDisc(far)).toBeLessThan(1.01);
    });
  });
});

describe('noise', () => {
  it('is never less than that of the photons, and goes as their root where they rule', () => {
    everywhere(['quantum-efficiency', 'pixel-pitch', 'iso', 'read-noise'], (values, factor) => {
      const pixel = {
        quantumEfficiency: values['quantum-efficiency']!,
        pixelPitch: values['pixel-pitch']!,
        iso: values.iso!,
      };
      const count = electrons(pixel);
      const clean = signalToNoise({ electrons: count, readNoise: 0 });
      expect(clean).toEqual(closeTo(Math.sqrt(count), rounding));
      expect(signalToNoise({ electrons: count, readNoise: values['read-noise']! })).toBeLessThanOrEqual(clean);
      const faster = electrons({ ...pixel, iso: pixel.iso * factor ** 2 });
      expect(signalToNoise({ electrons: faster, readNoise: 0 })).toEqual(closeTo(clean / factor, rounding));
    });
  });
});

describe('holding still', () => {
  const moving = ['circle-of-confusion', 'shake-rate', 'stabilisation', 'sideways-speed', 'subject-speed'] as const;

  it('asks for a shorter time with more of any movement, and never for a longer one with less stabilisation', () => {
    fc.assert(
      fc.property(lenses, quantities(moving), more, (lens, values, factor) => {
        const held = {
          ...lens,
          principalSeparation: 0,
          shakeRate: values['shake-rate']!,
          stabilisation: values.stabilisation!,
          sidewaysSpeed: values['sideways-speed']!,
          subjectSpeed: values['subject-speed']!,
        };
        const time = slowestExposureTime(held);
        const noLonger = time * (1 + 1e-12);
        for (const key of ['shakeRate', 'sidewaysSpeed', 'subjectSpeed', 'magnification'] as const) {
          expect(slowestExposureTime({ ...held, [key]: held[key] * factor })).toBeLessThanOrEqual(noLonger);
        }
        expect(slowestExposureTime({ ...held, stabilisation: held.stabilisation / factor })).toBeLessThanOrEqual(
          noLonger,
        );
        const doubled = slowestExposureTime({ ...held, circleOfConfusion: 2 * held.circleOfConfusion });
        expect(doubled).toEqual(closeTo(2 * time, rounding));
      }),
      { seed: 73, numRuns: 500 },
    );
  });

  it('keeps a share from 0 to 1 that more depth and less sway enlarge', () => {
    const limit = fc.double({ min: 1e-4, max: 100, noNaN: true });
    fc.assert(
      fc.property(limit, limit, limit, more, (nearLimit, farLimit, sway, factor) => {
        const share = keeperShare({ nearLimit, farLimit, sway, focusOffset: 0 });
        expect(share).toBeGreaterThan(0);
        expect(share).toBeLessThanOrEqual(1);
        expect(keeperShare({ nearLimit: nearLimit * factor, farLimit, sway, focusOffset: 0 })).toBeGreaterThanOrEqual(
          share,
        );
        expect(keeperShare({ nearLimit, farLimit, sway: sway * factor, focusOffset: 0 })).toBeLessThanOrEqual(share);
        // One measure for all three: only their ratios count.
        const scaled = {
          nearLimit: nearLimit * factor,
          farLimit: farLimit * factor,
          sway: sway * factor,
          focusOffset: 0,
        };
        expect(keeperShare(scaled)).toEqual(closeTo(share, rounding));
      }),
      { seed: 74, numRuns: 1000 },
    );
  });
});
