import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { lensInUse } from '#core/rig/lens-in-use.ts';
import type { Part } from '#core/rig/part.ts';
import { rigSpans } from '#core/rig/spans.ts';
import type { Chain } from '#site/chain/chain.ts';
import { numberIn } from '#site/kit/part.ts';
import type { BuiltChain } from './answers.ts';
import type { Conditions } from './conditions.ts';

/** What a chain is, as the formulas of the lessons know set-ups. */
export type SetUp = 'lens' | 'reversed' | 'close-up lens' | 'converter' | 'coupled' | 'objective' | 'other';

type Given = Readonly<Partial<Record<QuantityName, number>>>;

/** Which of the set-ups that have formulas of their own a chain is. */
export function kindOf({ positions }: BuiltChain): SetUp {
  const parts = positions.parts.map(({ part }) => part);
  const lenses = parts.filter(isLens);
  const count = (kind: Part['part']) => parts.filter(({ part }) => part === kind).length;
  if (count('tube lens') + count('converter by points') > 0) return 'other';
  const others = [count('close-up lens'), count('converter'), count('objective')];
  const isBare = others.every((number) => number === 0);
  const [main, front] = lenses;
  if (main && !front && isBare) return main.reversed ? 'reversed' : 'lens';
  if (main && front && isBare) return 'coupled';
  if (!main || front || main.reversed || others[0]! + others[1]! + others[2]! > 1) return 'other';
  if (count('close-up lens') === 1) return 'close-up lens';
  return count('converter') === 1 ? 'converter' : 'objective';
}

type LensPart = Extract<Part, { part: 'lens' }>;
const isLens = (part: Part): part is Part & LensPart => part.part === 'lens';

/** The lens at its setting, by the ids that formulas take. */
function ofLens(part: LensPart): Given {
  const lens = lensInUse(part.lens, part.focusMagnification, part.fNumber);
  return {
    'focal-length': lens.focalLength,
    'principal-separation': lens.principalSeparation,
    'front-principal-depth': lens.frontPrincipalDepth,
    'pupil-magnification': lens.pupilMagnification,
    'focus-magnification': part.focusMagnification,
    // As the light finds it: a lens that is shorter close up is not stopped down as marked any more.
    'f-number': lens.focalLength / lens.entrancePupil,
    'focus-travel': lens.focalLength * part.focusMagnification,
    'rear-protrusion': lens.rearProtrusion,
  };
}

/** The mark of the lens nearest to the camera, and what it comes to where the lens is focused closer by another focal length. */
export function driftOf({ positions }: BuiltChain): { at: number; marked: number; byOpening: number } | undefined {
  const at = positions.parts.findIndex(({ part }) => isLens(part));
  const part = positions.parts[at]?.part;
  if (!part || !isLens(part)) return undefined;
  return { at, marked: part.fNumber, byOpening: ofLens(part)['f-number']! };
}

/** Numbers of the camera and of what answers lean on besides the chain. */
function around(chain: Chain, { circle, pixelPitch }: BuiltChain, conditions: Conditions): Given {
  const { part } = chain[0]!.thing;
  return {
    ...conditions,
    'circle-of-confusion': circle,
    'sensor-width': numberIn(part, 'sensor-width')!,
    'sensor-height': numberIn(part, 'sensor-height')!,
    'register-distance': numberIn(part, 'register-distance')!,
    'focus-offset': 0,
    ...(pixelPitch !== undefined && { 'pixel-pitch': pixelPitch }),
  };
}

/** Length of all rings and bellows among some parts. */
const lengthOf = (parts: readonly Part[]) =>
  parts.reduce((sum, part) => sum + (part.part === 'ring' || part.part === 'bellows' ? part.extension : 0), 0);

/**
 * What is given of a chain that is such a set-up, base units by id: what its formulas start from. Of any other chain, only what stands around it.
 *
 * A camera of another register than the lens was made for is so much of a ring, or takes it away.
 */
export function givenBy(chain: Chain, built: BuiltChain, conditions: Conditions, kind: SetUp): Given {
  const parts = built.positions.parts.map(({ part }) => part);
  const lenses = parts.filter(isLens);
  const main = lenses[0];
  const common = around(chain, built, conditions);
  const stop = chain[built.linkOf[limit(built)] ?? 0]!.thing;
  const widest = stop.kind === 'lens' ? numberIn(stop.part, 'max-aperture') : undefined;
  const maxAperture: Given = widest === undefined ? {} : { 'max-aperture': widest };
  if (kind === 'other' || !main) return { ...common, ...maxAperture };
  const at = parts.indexOf(main);
  const register = common['register-distance']!;
  const behind = lengthOf(parts.slice(0, at));
  const off = register - main.lens.registerDistance;
  const own = ofLens(main);
  switch (kind) {
    case 'lens':
      return { ...common, ...maxAperture, ...own, extension: behind + off };
    case 'reversed':
      return {
        ...common,
        ...maxAperture,
        ...own,
        extension: behind,
        'reversed-lens.register-distance': main.lens.registerDistance,
      };
    case 'close-up lens': {
      const closeUp = parts.find((part) => part.part === 'close-up lens') as Extract<Part, { part: 'close-up lens' }>;
      const gap = rigSpans(built.positions)['close-up-gap'];
      if (behind + off !== 0) return { ...common, ...maxAperture };
      return {
        ...common,
        ...maxAperture,
        ...own,
        'close-up-power': closeUp.closeUpPower,
        ...(gap && { 'close-up-gap': gap[1] - gap[0] }),
      };
    }
    case 'converter': {
      const place = parts.findIndex((part) => part.part === 'converter');
      const converter = parts[place] as Extract<Part, { part: 'converter' }>;
      const rear = lengthOf(parts.slice(0, place));
      const front = lengthOf(parts.slice(place, at)) + off;
      return {
        ...common,
        ...maxAperture,
        ...own,
        'converter-factor': converter.converterFactor,
        'converter-length': converter.converterLength,
        ...(rear === 0 && { extension: front }),
        'front-ring.extension': front,
        'rear-ring.extension': rear,
      };
    }
    case 'coupled': {
      const front = lenses[1]!;
      const isFar = main.focusMagnification === 0 && front.focusMagnification === 0 && behind + off === 0;
      if (!isFar) return { ...common, ...maxAperture };
      const [one, other] = [own, ofLens(front)];
      return {
        ...common,
        ...maxAperture,
        'main-lens.focal-length': one['focal-length']!,
        'main-lens.f-number': one['f-number']!,
        'reversed-lens.focal-length': other['focal-length']!,
        'reversed-lens.f-number': other['f-number']!,
      };
    }
    case 'objective': {
      const objective = parts.find((part) => part.part === 'objective') as Extract<Part, { part: 'objective' }>;
      if (main.focusMagnification !== 0 || behind + off !== 0 || !('tubeFocalLength' in objective.design)) {
        return { ...common, ...maxAperture };
      }
      return {
        ...common,
        ...maxAperture,
        'focal-length': own['focal-length']!,
        'f-number': own['f-number']!,
        'objective-magnification': objective.objectiveMagnification,
        'numerical-aperture': objective.numericalAperture,
        'tube-focal-length': objective.design.tubeFocalLength,
      };
    }
  }
}

/** Part of the engine whose stop limits the light. */
function limit({ positions }: BuiltChain): number {
  const { solved } = positions;
  return solved.sharpPlane === 'nowhere' ? 0 : solved.limitedBy;
}

/** The chain as one lens, where it acts as one that gathers light: base units by id. */
export function asOneLens(chain: Chain, built: BuiltChain, conditions: Conditions): Given | undefined {
  const { whole, entrancePupil, exitPupil, foremost } = built.positions;
  if (!whole || !(whole.focalLength > 0) || !entrancePupil || !exitPupil) return undefined;
  return {
    ...givenBy(chain, built, conditions, 'other'),
    'focal-length': whole.focalLength,
    'principal-separation': whole.frontPrincipal - whole.rearPrincipal,
    'front-principal-depth': foremost - whole.frontPrincipal,
    'image-distance': whole.rearPrincipal,
    'pupil-magnification': exitPupil.diameter / entrancePupil.diameter,
    'entrance-pupil': entrancePupil.diameter,
  };
}
