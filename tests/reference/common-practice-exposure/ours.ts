import { frameCount } from '#core/stack/frame-count.formula.ts';
import { ambientShare } from '#core/exposure/ambient-share.formula.ts';
import { electrons } from '#core/exposure/electrons.formula.ts';
import { fNumberForFlash } from '#core/exposure/f-number-for-flash.formula.ts';
import { lightValue } from '#core/exposure/light-value.formula.ts';
import { signalToNoise } from '#core/exposure/signal-to-noise.formula.ts';
import { slowestExposureTime } from '#core/exposure/slowest-exposure-time.formula.ts';
import { apertureValue } from '#core/exposure/stops.ts';
import { lightLoss } from '#core/gaussian/light-loss.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Flash {
  guideNumber: number;
  flashDistance: number;
}

const mark = (flash: Flash, change = {}) =>
  apertureValue(fNumberForFlash({ iso: 100, flashPower: 1, lightLoss: 0, ...flash, ...change }));

const turning = {
  circleOfConfusion: 0.03,
  focalLength: 100,
  magnification: 1e-9,
  principalSeparation: 0,
  shakeRate: 0.03,
  stabilisation: 0,
  sidewaysSpeed: 0,
  subjectSpeed: 0,
};

const signal = (iso: number) =>
  signalToNoise({ electrons: electrons({ quantumEfficiency: 0.5, pixelPitch: 0.006, iso }), readNoise: 0 });

export const ours = oursById({
  'sunny-sixteen': ({ iso }: { iso: readonly number[] }) => ({
    lightValue: iso.map((speed) => lightValue({ effectiveFNumber: 16, exposureTime: 1 / speed, iso: speed })),
  }),
  'flash-twice-as-far': (flash: Flash) => ({
    stops: mark(flash) - mark(flash, { flashDistance: 2 * flash.flashDistance }),
  }),
  'flash-half-power': (flash: Flash) => ({ stops: mark(flash) - mark(flash, { flashPower: 0.5 }) }),
  'flash-life-size': (flash: Flash) => {
    const lifeSize = lightLoss({ fNumber: 8, effectiveFNumber: 16 });
    return { stops: mark(flash) - mark(flash, { lightLoss: lifeSize }) };
  },
  'stabiliser-two-stops': ({ stabilisation }: { stabilisation: number }) => ({
    timesLonger: slowestExposureTime({ ...turning, stabilisation }) / slowestExposureTime(turning),
  }),
  'rule-at-life-size': ({ focalLength }: { focalLength: number }) => {
    const lens = { ...turning, focalLength };
    return { timesShorter: slowestExposureTime(lens) / slowestExposureTime({ ...lens, magnification: 1 }) };
  },
  'iso-noise': ({ iso }: { iso: number }) => ({ ratio: signal(iso) / signal(2 * iso) }),
  'flash-freezes': ({ stops }: { stops: number }) => ({ ambientShare: ambientShare({ ambientUnderexposure: stops }) }),
  'depth-half-frames-twice': (stack: { subjectDepth: number; depthOfField: number; overlap: number }) => ({
    ratio: frameCount({ ...stack, depthOfField: stack.depthOfField / 2 }) / frameCount(stack),
  }),
});
