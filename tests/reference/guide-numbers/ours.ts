import { effectiveFNumberFromGuideNumber } from '#core/exposure/effective-f-number-from-guide-number.formula.ts';
import { fNumberForFlash } from '#core/exposure/f-number-for-flash.formula.ts';
import { flashPowerForFNumber } from '#core/exposure/flash-power-for-f-number.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

const full = { iso: 100, flashPower: 1 };
const foot = 0.3048;

interface Dimmed {
  guideNumber: number;
  flashDistance: number;
  exactFNumber: number;
  stopsOpened: readonly number[];
}

/** These sources know subjects far away, where the effective f-number is the marked one. */
const fNumberAt = (guideNumber: number, flashDistance: number) =>
  effectiveFNumberFromGuideNumber({ ...full, guideNumber, flashDistance });

export const ours = oursById({
  'guide-number-45-at-5': (flash: { guideNumber: number; flashDistance: number }) => ({
    fNumber: fNumberAt(flash.guideNumber, flash.flashDistance),
  }),
  'guide-number-32-at-4': (flash: { guideNumber: number; flashDistance: number }) => ({
    fNumber: fNumberAt(flash.guideNumber, flash.flashDistance),
  }),
  'guide-numbers-in-feet': (flash: { guideNumbersInFeet: readonly number[]; feet: readonly number[] }) => ({
    fNumbers: flash.guideNumbersInFeet.map((number, index) =>
      fNumberAt(number * foot, flash.feet[index]! * 1000 * foot),
    ),
  }),
  // So much further goes what needs that share of the power: twice the light is half the share.
  'two-flashes-alike': ({ flashes }: { flashes: number }) => ({
    factor:
      1 /
      Math.sqrt(flashPowerForFNumber({ guideNumber: 1, iso: 100 * flashes, flashDistance: 1000, effectiveFNumber: 1 })),
  }),
  'guide-number-45-at-8': (flash: { guideNumber: number; flashDistance: number; fNumber: number }) => ({
    fNumber: fNumberAt(flash.guideNumber, flash.flashDistance),
    // F-number and distance stand for each other: swap them.
    flashDistance: 1000 * fNumberAt(flash.guideNumber, 1000 * flash.fNumber),
  }),
  'guide-number-37-in-metres': (flash: { guideNumber: number; flashDistances: readonly number[] }) => ({
    fNumbers: flash.flashDistances.map((distance) => fNumberAt(flash.guideNumber, distance)),
  }),
  'guide-number-120-in-feet': (flash: { guideNumberInFeet: number; flashDistances: readonly number[] }) => ({
    fNumbers: flash.flashDistances.map((distance) => fNumberAt(flash.guideNumberInFeet * foot, distance)),
  }),
  'guide-number-power': (flash: Dimmed) => ({
    power: flash.stopsOpened.map((stops) =>
      flashPowerForFNumber({ ...flash, iso: 100, effectiveFNumber: flash.exactFNumber / Math.SQRT2 ** stops }),
    ),
  }),
  'guide-number-49-at-3': (flash: { guideNumber: number; flashDistance: number }) => ({
    fNumber: fNumberForFlash({ ...full, ...flash, lightLoss: 0 }),
  }),
  'guide-number-iso': ({ iso }: { iso: readonly number[] }) => ({
    factor: iso.map((speed) =>
      effectiveFNumberFromGuideNumber({ guideNumber: 1, flashPower: 1, flashDistance: 1000, iso: speed }),
    ),
  }),
});
