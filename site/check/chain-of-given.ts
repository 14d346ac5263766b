import { plainNumber } from '#core/quantity/plain-number.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { conditionNames, rangeOfCondition } from '#site/bench/condition-fields.ts';
import { addressOfChain } from '#site/chain/chain-in-text.ts';
import type { Chain, Link } from '#site/chain/chain.ts';
import { crateThing } from '#site/chain/crate-things.ts';
import { thingOf } from '#site/chain/own-thing.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { faultOf } from '#site/kit/fault.ts';
import { rangeOf } from '#site/kit/field.ts';
import { planOf } from '#site/kit/kinds.ts';
import { numberIn, type NewPart } from '#site/kit/part.ts';
import { crateRegister } from '#site/state/lens-marks.ts';
import { parts } from '#site/state/crate-parts.ts';

type Given = Readonly<Partial<Record<QuantityName, number>>>;

/** The least that a form accepts as the greatest magnification of a lens; one that is set to infinity may have it. */
const hardlyAny = 0.001;
/** Where nothing is said of it. */
const usualFNumber = 8;
/** Between what the widest opening of a lens is accepted. */
const fNumbers = { least: 0.95, most: 22 };

/**
 * What somebody has written, as a chain that can be put on the bench, where a chain is meant: a lens, on rings, with a close-up lens or a converter, or one
 * on another. What was not said of the lens is taken as answers take it: P = 1, H and H′ in one place at the front rim.
 *
 * @param given base units by id
 * @returns the query that sets the bench so; undefined where no chain is meant, or one that no numbers here describe
 */
export function benchQuery(given: Given, setUps: readonly string[]): string | undefined {
  const chain = chainOf(given, setUps);
  if (!chain || chain.some(({ thing }) => thing.fault !== undefined || faultOf(thing.part) !== undefined))
    return undefined;
  const set = conditionNames.flatMap((name) => {
    const value = given[name];
    const { least, most } = rangeOfCondition(name);
    return value === undefined || value < least || value > most ? [] : [`${name}=${plainNumber(value)}`];
  });
  return [`chain=${addressOfChain(chain)}`, ...set].join('&');
}

function chainOf(given: Given, setUps: readonly string[]): Chain | undefined {
  const isReversed = setUps.includes('reversed lens');
  if (setUps.includes('objective') || (isReversed && given['register-distance'] === undefined)) return undefined;
  const main = given['main-lens.focal-length'];
  const front = given['reversed-lens.focal-length'];
  if (main !== undefined && front !== undefined) {
    const turned = turnedLens({ 'focal-length': front, 'f-number': given['reversed-lens.f-number'] });
    const coupled = [
      lensOf({ 'focal-length': main, 'f-number': given['main-lens.f-number'] }),
      { thing: crateThing('coupling-ring') },
    ];
    return [cameraOf(given, coupled[0]!), ...coupled, turned];
  }
  const { extension, 'focal-length': focalLength, 'close-up-power': power, 'converter-factor': factor } = given;
  if (focalLength === undefined) return undefined;
  if (factor !== undefined && (isReversed || power !== undefined)) return undefined;
  const converter = factor === undefined ? [] : converterOf(factor, given['converter-length']);
  if (!converter) return undefined;
  const isMeant = [extension, power, given['focus-magnification'], given.magnification].some(
    (one) => one !== undefined,
  );
  if (!isMeant && given['f-number'] === undefined) return undefined;
  const ring: readonly Link[] =
    extension === undefined || extension < 0.1
      ? []
      : [
          own({
            kind: isReversed ? 'reversing-ring' : 'ring',
            name: `${printQuantity('extension', extension)} ring`,
            extension,
            ...(!isReversed && { contacts: 'yes' }),
          }),
        ];
  const closeUp: readonly Link[] =
    power === undefined
      ? []
      : [
          own({
            kind: 'close-up-lens',
            name: `${printQuantity('close-up-power', power)} close-up lens`,
            'close-up-power': power,
            glass: 'single',
          }),
        ];
  const setLens = {
    ...given,
    // The glass of a close-up lens stands its seat before the rim, and its gap is counted from H to there.
    ...(power !== undefined && {
      'front-principal-depth': (given['close-up-gap'] ?? 0) - parts['close-up-seat'].extension,
    }),
    // With nothing between, what is said of the picture is what the lens does by itself.
    ...(extension === undefined && power === undefined && { 'focus-magnification': ownMagnification(given) }),
  };
  const lens = isReversed ? turnedLens(setLens) : lensOf(setLens);
  const behind = setUps.includes('ring behind the converter') ? [...ring, ...converter] : [...converter, ...ring];
  return [cameraOf(given, lens), ...behind, lens, ...closeUp];
}

/** *m₀* of a lens with nothing but perhaps a converter behind it: what is said of the picture is so many times larger. */
function ownMagnification(given: Given): number | undefined {
  const { 'focus-magnification': own, magnification, 'converter-factor': factor = 1 } = given;
  return own ?? (magnification === undefined ? undefined : magnification / factor);
}

/** Size, room and light are the same with any length; where none is said it is that of the crate's. Undefined for one that no part has. */
function converterOf(
  factor: number,
  length: number = parts['converter-2']['converter-length'],
): readonly Link[] | undefined {
  const part: NewPart = {
    kind: 'converter',
    name: `${printQuantity('converter-factor', factor)} converter`,
    'converter-factor': factor,
    'converter-length': length,
    contacts: 'yes',
  };
  return isPossible(part) ? [own(part)] : undefined;
}

/** Whether every number of a part is in the range that a kit takes. */
const isPossible = (part: NewPart): boolean =>
  planOf(part.kind).fields.every(({ key, reads }) => {
    const value = numberIn(part, key);
    if (value === undefined || reads.by !== 'quantity') return true;
    const { least, most } = rangeOf(reads);
    return value >= least && value <= most;
  });

const own = (part: NewPart): Link => ({ thing: thingOf(part, part.kind) });

/** The camera that *lens* is made for, unless its register is given. */
function cameraOf(given: Given, lens: Link): Link {
  const width = given['sensor-width'] ?? 36;
  const { 'sensor-height': height, 'pixel-pitch': pitch } = given;
  const register = given['register-distance'] ?? numberIn(lens.thing.part, 'register-distance')!;
  if (width === 36 && height === undefined && pitch === undefined && register === crateRegister)
    return { thing: crateThing('body-36') };
  const pixels = pitch === undefined ? undefined : Math.round(width / pitch);
  return own({
    kind: 'camera',
    name: `${printQuantity('sensor-width', width)} sensor`,
    'sensor-width': width,
    'sensor-height': height ?? (2 / 3) * width,
    'register-distance': register,
    ...(pixels !== undefined && pixels >= 100 && pixels <= 100000 && { 'pixels-across': pixels }),
  });
}

type OfLens = { readonly [Name in QuantityName]?: number | undefined };

/** A lens turned round. Nothing is usual for where its H stands, which decides the size: the bench tells between what that lies. */
const turnedLens = (given: OfLens): Link => ({
  ...lensOf(given, given['front-principal-depth'] === undefined),
  turned: true,
});

function lensOf(given: OfLens, isDepthOpen = false): Link {
  const focalLength = given['focal-length']!;
  const fNumber = given['f-number'];
  const set = given['focus-magnification'] ?? 0;
  const separation = given['principal-separation'] ?? 0;
  const depth = given['front-principal-depth'] ?? 0;
  // Who says at which f-number a lens is set says nothing of the widest that it has.
  const widest = given['max-aperture'] ?? (fNumber !== undefined && fNumber < 1 ? fNumber : undefined);
  // Its rim is not behind its flange: the mount of a short lens is taken to be as near to the sensor as it takes.
  const register = isDepthOpen ? crateRegister : Math.min(crateRegister, focalLength + separation + depth);
  const part: NewPart = {
    kind: 'lens',
    name: `${printQuantity('focal-length', focalLength)} lens`,
    'focal-length': focalLength,
    ...(widest !== undefined && { 'max-aperture': Math.min(fNumbers.most, Math.max(fNumbers.least, widest)) }),
    ...(fNumber !== undefined && fNumber > 64 && { 'smallest-aperture': fNumber }),
    'focus-magnification': Math.max(hardlyAny, set),
    focusing: 'whole',
    iris: 'lens',
    'pupil-magnification': given['pupil-magnification'] ?? 1,
    'principal-separation': separation,
    ...(!isDepthOpen && { 'front-principal-depth': depth }),
    'register-distance': register,
  };
  return { ...own(part), focus: set, fNumber: fNumber ?? usualFNumber };
}
