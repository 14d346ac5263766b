import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { airyIntensity, encircledEnergy } from './airy-pattern.ts';
import { airyProfile } from './airy-profile.ts';
import { airyRings } from './airy-rings.ts';
import { coneOfLens } from '#core/depth/cone.ts';
import { bestFNumber, type DepthAtFrequency } from './best-f-number.ts';
import { blurDiscTransfer } from './blur-disc-transfer.ts';
import { energyProfile } from './energy-profile.ts';
import { opticalTransfer } from './optical-transfer.ts';
import { photopicEnergyProfile, photopicProfile } from './photopic-spread.ts';
import { photopicTransfer } from './photopic-transfer.ts';
import { pixelTransfer } from './pixel-transfer.ts';
import { pointSpreadProfile, strehlRatio } from './point-spread.ts';
import { stoppedDownAberration } from './pupil.ts';
import { subjectResolution } from './subject-resolution.ts';

const point = { imageRadius: 0.003, wavelength: 0.00055, effectiveFNumber: 16 };
const aberrations = { defocusAberration: 0.3, sphericalAberration: -0.2 };
const white = { ...aberrations, imageRadius: 0.003, effectiveFNumber: 16 };
const pattern = { ...aberrations, spatialFrequency: 40 };

type LensSet = Parameters<typeof coneOfLens>[0];

type Asked = readonly [name: string, given: Readonly<Record<string, number>>, ask: (given: never) => unknown];

/** What is no formula file, with numbers that it answers: those have a test of their own that goes through them all. */
const asked: readonly Asked[] = [
  ['airyIntensity', point, airyIntensity],
  ['encircledEnergy', point, encircledEnergy],
  ['airyProfile', point, (given) => airyProfile(given, 4)],
  ['airyRings', { wavelength: 0.00055, effectiveFNumber: 16 }, (given) => airyRings(given, 3)],
  ['blurDiscTransfer', { spatialFrequency: 40, defocusBlur: 0.02 }, blurDiscTransfer],
  ['pixelTransfer', { spatialFrequency: 40, pixelPitch: 0.006 }, pixelTransfer],
  ['opticalTransfer', { ...pattern, cutoffFrequency: 110 }, opticalTransfer],
  ['photopicTransfer', { ...pattern, effectiveFNumber: 16 }, photopicTransfer],
  ['photopicProfile', white, (given) => photopicProfile(given, 3)],
  ['photopicEnergyProfile', white, (given) => photopicEnergyProfile(given, 3)],
  ['pointSpreadProfile', { ...point, ...aberrations }, (given) => pointSpreadProfile(given, 3)],
  ['energyProfile', { ...point, ...aberrations }, (given) => energyProfile(given, 3)],
  ['strehlRatio', aberrations, strehlRatio],
  ['stoppedDownAberration', { sphericalAberration: 2, maxAperture: 2.8, fNumber: 8 }, stoppedDownAberration],
  [
    'bestFNumber',
    {
      focalLength: 50,
      magnification: 1,
      pupilMagnification: 1,
      subjectDepth: 1,
      spatialFrequency: 40,
      wavelength: 0.00055,
    },
    (given: DepthAtFrequency & Omit<LensSet, 'fNumber'>) =>
      bestFNumber({ ...given, coneAt: (fNumber) => coneOfLens({ ...given, fNumber }) }, [8, 11]),
  ],
  [
    'subjectResolution',
    { effectiveFNumber: 16, magnification: 1, wavelength: 0.00055, pixelPitch: 0.004 },
    subjectResolution,
  ],
];

const signed = ['defocusAberration', 'sphericalAberration'];
const idOf = (name: string) =>
  name
    .replace('fNumber', 'f-number')
    .replace('FNumber', '-f-number')
    .replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

describe.each(asked)('%s', (_, given, ask) => {
  it.runIf('effectiveFNumber' in given)('refuses by name a cone wider than any in air, and takes the widest', () => {
    expect(() => ask({ ...given, effectiveFNumber: 0.5 } as never)).not.toThrow();
    expect(() => ask({ ...given, effectiveFNumber: 0.499 } as never)).toThrow(/effective-f-number is 0.499/);
  });

  it.each(Object.keys(given))('refuses by name a %s that is none', (name) => {
    expect(() => ask(given as never)).not.toThrow();
    for (const value of [NaN, Infinity, ...(signed.includes(name) ? [] : [-1])]) {
      const attempt = () => ask({ ...given, [name]: value } as never);
      expect(attempt, String(value)).toThrow(OutOfRange);
      expect(attempt, String(value)).toThrow(expect.objectContaining({ quantity: idOf(name), value }));
    }
  });
});
