import { depthOfFieldInMedium } from '#core/depth/depth-of-field-in-medium.formula.ts';
import { waveDepth } from '#core/depth/wave-depth.formula.ts';
import { ambientShareOfFullExposure } from '#core/exposure/ambient-share-of-full-exposure.formula.ts';
import { keeperShare } from '#core/exposure/keeper-share.formula.ts';
import { lightingDifference } from '#core/exposure/lighting-difference.formula.ts';
import { angleOfView } from '#core/gaussian/angle-of-view.formula.ts';
import {
  workingDistanceIntoTank,
  workingDistanceIntoTankFormula,
} from '#core/gaussian/working-distance-into-tank.formula.ts';
import { onlyRoot } from '#core/quantity/solve.ts';
import { stackTimeInTurn } from '#core/stack/stack-time-in-turn.formula.ts';
import { defocusAberrationOfDepth } from '#core/wave/defocus-aberration-of-depth.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

const angles = (given: { sensorWidth: number; focalLength: readonly number[]; magnification?: number }) => ({
  angle: given.focalLength.map((focalLength) =>
    angleOfView({ ...given, focalLength, magnification: given.magnification ?? 0, pupilMagnification: 1 }),
  ),
});

const waves = (given: { index: number; wavelength: number; numericalAperture: readonly number[] }) => ({
  depth: given.numericalAperture.map((numericalAperture) =>
    depthOfFieldInMedium({
      refractiveIndex: given.index,
      depthOfField: waveDepth({ wavelength: given.wavelength, numericalAperture }),
    }),
  ),
});

export const ours = oursById({
  'angle-table': angles,
  'angle-example': angles,
  'angle-close-up': angles,
  'apparent-depth': ({ depth, index }: { depth: number; index: number }) => ({
    apparent: workingDistanceIntoTank({
      airGap: 0,
      paneThickness: 0,
      paneRefractiveIndex: 1,
      immersionDepth: depth,
      mediumRefractiveIndex: index,
    }),
  }),
  pool: ({ apparent, index }: { apparent: number; index: number }) => ({
    depth: onlyRoot(workingDistanceIntoTankFormula, {
      ask: 'immersion-depth',
      given: {
        'working-distance': apparent,
        'air-gap': 0,
        'pane-thickness': 0,
        'pane.refractive-index': 1,
        'medium.refractive-index': index,
      },
    }),
  }),
  'waves-in-oil': waves,
  'waves-in-oil-wide': waves,
  'waves-in-oil-objective': waves,
  // In the oil light is n times as short, and sin α is NA/n. Defocus grows evenly with depth; the step leads to one side of the focus only.
  'axial-sampling': (given: { index: number; wavelength: number; numericalAperture: number; defocus: number }) => {
    const numericalAperture = given.numericalAperture / given.index;
    const oneMillimetre = { subjectDepth: 1, numericalAperture, wavelength: given.wavelength / given.index };
    return { step: given.defocus / defocusAberrationOfDepth(oneMillimetre) / 2 };
  },
  'lighting-ratio': ({ main, fill }: { main: readonly number[]; fill: readonly number[] }) => ({
    stops: main.map((light, k) => lightingDifference({ mainLightIlluminance: light, fillLightIlluminance: fill[k]! })),
  }),
  'stops-as-shares': ({ stops }: { stops: readonly number[] }) => ({
    share: stops.map((ambientUnderexposure) => ambientShareOfFullExposure({ ambientUnderexposure })),
  }),
  'off-centre-normal': ({ offset }: { offset: readonly number[] }) => ({
    share: offset.map((o) => keeperShare({ nearLimit: 1, farLimit: 1, sway: 1, focusOffset: o })),
  }),
  'waits-in-turn': (given: { frames: number; exposure: number; settling: number; recycling: number }) => ({
    time: stackTimeInTurn({
      frameCount: given.frames,
      exposureTime: given.exposure,
      settlingTime: given.settling,
      recyclingTime: given.recycling,
    }),
  }),
});
