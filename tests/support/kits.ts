import fc from 'fast-check';
import type { KitCamera, KitLens, KitRow, KitSubject } from '#core/rig/kit/kit.ts';
import type { Lens } from '#core/rig/lens.ts';
import { lens28, lens50 } from './rig-parts.ts';

/** Rows of kits that tests search; prices from 0, so that budgets and ties matter. */
export const body36: KitCamera = {
  part: 'camera',
  id: 'body 36',
  price: 0,
  mount: 'club',
  registerDistance: 44,
  sensorWidth: 36,
  sensorHeight: 24,
  circleOfConfusion: 0.025,
};

export const normalLens: KitLens = {
  part: 'lens',
  id: 'lens 50',
  price: 0,
  mount: 'club',
  lens: lens50,
  maxAperture: 1.8,
  smallestAperture: 22,
};

export const wideLens: KitLens = {
  part: 'lens',
  id: 'lens 28',
  price: 30,
  mount: 'other',
  lens: lens28,
  maxAperture: 2.8,
  smallestAperture: 16,
};

const macro: Lens = {
  focalLength: 90,
  principalSeparation: 3,
  frontPrincipalDepth: 40,
  pupilMagnification: 0.85,
  registerDistance: 44,
  focusing: { by: 'internal', closestMagnification: 1, closestFocusDistance: 300, keeps: 'entrance-pupil' },
  apertureControl: 'camera',
};

/** The sharp plane is soon inside it. */
const deepRimmed: Lens = {
  ...lens50,
  focalLength: 18,
  principalSeparation: 20,
  frontPrincipalDepth: 62,
  pupilMagnification: 2.1,
};

const known = (focusMagnification: number, focalLength: number, frontPrincipalDepth: number, fNumberDrift: number) => ({
  focusMagnification,
  focalLength,
  frontPrincipalDepth,
  fNumberDrift,
  principalSeparation: -2 + focusMagnification,
  pupilMagnification: 1.1 + 0.2 * focusMagnification,
});

const measured: Lens = {
  ...lens50,
  focalLength: 60,
  principalSeparation: -2,
  frontPrincipalDepth: 30,
  pupilMagnification: 1.1,
  focusing: { by: 'states', states: [known(0, 60, 30, 1), known(0.25, 57, 28, 0.97), known(0.5, 54, 25, 0.95)] },
};

export const ringOf = (extension: number, more: Partial<Extract<KitRow, { part: 'ring' }>> = {}): KitRow => {
  return { part: 'ring', id: `ring ${extension}`, price: 8, mount: 'club', extension, ...more };
};
export const closeUpOf = (
  closeUpPower: number,
  more: Partial<Extract<KitRow, { part: 'close-up lens' }>> = {},
): KitRow => {
  return { part: 'close-up lens', id: `close-up ${closeUpPower}`, price: 15, closeUpPower, clearAperture: 49, ...more };
};
export const converter: KitRow = {
  part: 'converter',
  id: 'converter',
  price: 60,
  mount: 'club',
  converterFactor: 1.4,
  converterLength: 20,
};
export const reversingRing: KitRow = { part: 'reversing ring', id: 'reversing', price: 5, mount: 'club', extension: 4 };
export const couplingRing: KitRow = { part: 'coupling ring', id: 'coupling', price: 4, extension: 3 };

/** What a random kit may hold; some rows are alike but for their names, some on a mount of their own. */
const bag: readonly KitRow[] = [
  { ...body36, id: 'other body', mount: 'other', registerDistance: 46.5, sensorWidth: 23.5 },
  { ...body36, id: 'second body 36' },
  normalLens,
  { ...normalLens, id: 'second lens 50' },
  wideLens,
  { ...normalLens, id: 'lens 90', lens: macro, maxAperture: 2.8, price: 50 },
  { ...normalLens, id: 'lens 60', lens: measured, maxAperture: 2.5, price: 20 },
  { ...normalLens, id: 'lens 18', lens: deepRimmed, maxAperture: 3.5 },
  ringOf(12),
  ringOf(12, { id: 'second ring 12' }),
  ringOf(24, { coupled: false }),
  ringOf(36),
  ringOf(9, { mount: 'other' }),
  closeUpOf(2, { seat: 5 }),
  closeUpOf(4, { seat: 3, clearAperture: 30 }),
  closeUpOf(4, { id: 'second close-up 4', seat: 3, clearAperture: 30 }),
  converter,
  { ...converter, id: 'long converter', converterFactor: 2, converterLength: 35, coupled: false },
  { ...converter, id: 'third converter', converterFactor: 1.7, converterLength: 28 },
  reversingRing,
  couplingRing,
];

/** Of which somebody knows where its planes are. */
export const knownConverter: KitRow = {
  ...converter,
  id: 'known converter',
  points: { focalLength: -90, principalSeparation: -4, frontPrincipalDepth: 7 },
};

/** Kits with a body and a lens, and up to *most* parts of all kinds. */
export const kits = (most: number): fc.Arbitrary<readonly KitRow[]> =>
  fc
    .shuffledSubarray([...bag], { minLength: Math.min(3, most), maxLength: most })
    .map((rows) => [body36, ...(rows.some(({ part }) => part === 'lens') ? rows : [normalLens, ...rows])]);

export const subjects: fc.Arbitrary<KitSubject> = fc.record({
  subjectWidth: fc.integer({ min: 50, max: 3000 }).map((tenths) => tenths / 10),
  subjectDepth: fc.integer({ min: 0, max: 60 }).map((tenths) => tenths / 10),
  subjectSpeed: fc.constantFrom(0, 1, 10),
  leastFill: fc.constantFrom(0.3, 0.6, 0.9),
  nearestDistance: fc.constantFrom(0, 30, 100),
  longestExposure: fc.constantFrom(0.01, 1, 30),
  luminance: fc.constantFrom(20, 500, 5000),
  iso: fc.constantFrom(100, 800),
  wavelength: fc.constant(0.00055),
});
