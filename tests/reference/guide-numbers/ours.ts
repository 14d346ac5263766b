import { effectiveFNumberFromGuideNumber } from '#core/exposure/effective-f-number-from-guide-number.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

const full = { iso: 100, flashPower: 1 };
const foot = 0.3048;

/** These sources know subjects far away, where the effective f-number is the marked one. */
const fNumberAt = (guideNumber: number, flashDistance: number) =>
  effectiveFNumberFromGuideNumber({ ...full, guideNumber, flashDistance });

export const ours = oursById({
  'guide-number-45-at-5': (flash: { guideNumber: number; flashDistance: number }) => ({
    fNumber: fNumberAt(flash.guideNumber, flash.flashDistance),
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
  'guide-number-iso': ({ iso }: { iso: readonly number[] }) => ({
    factor: iso.map((speed) =>
      effectiveFNumberFromGuideNumber({ guideNumber: 1, flashPower: 1, flashDistance: 1000, iso: speed }),
    ),
  }),
});
