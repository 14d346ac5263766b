import { closestMagnification } from '#core/rig/lens-in-use.ts';
import type { Lens } from '#core/rig/lens.ts';
import type { Part } from '#core/rig/part.ts';
import { converterPoints } from '#site/kit/converter-points.ts';
import { engravedObjective } from '#site/kit/engraved-objective.ts';
import { numberIn, wordsIn } from '#site/kit/part.ts';
import { parts as owned } from '#site/state/crate-parts.ts';
import { claws } from '#site/state/stands-out.ts';
import { crateThing } from './crate-things.ts';
import type { ChainKind, Thing } from './thing.ts';

/** A thing where it stands in a chain, and how it is set. */
export interface Link {
  readonly thing: Thing;
  /** A lens with its front towards the camera. */
  readonly turned?: boolean;
  /** *m₀*, of a lens; where left out it is set as it usually is there, see {@link focusOf}. */
  readonly focus?: number;
  /** *N*, of a lens; where left out see {@link fNumberOf}. */
  readonly fNumber?: number;
  /** mm, of bellows; where left out they are closed. */
  readonly extension?: number;
}

/** From the camera outwards; the first is the camera, and the only one. */
export type Chain = readonly Link[];

/** So many parts nobody mounts. */
export const mostLinks = 16;

const usualFNumber = 8;

/** Of an objective's shoulder before the rim of the lens that it is on, mm: common practice. */
const adapter = 3;

/** A chain to begin with. */
export const firstChain = (): Chain => ['body-36', 'ring-24', 'lens-50'].map((slug) => ({ thing: crateThing(slug) }));

/** Kinds that have a stop of their own. */
const limiting: readonly ChainKind[] = ['lens', 'objective', 'finite-objective'];

/** Whether light goes through another lens before it comes to this one. */
const isBehindGlass = (chain: Chain, at: number) =>
  chain.slice(at + 1).some(({ thing }) => limiting.includes(thing.kind));

const hasGlassBehind = (chain: Chain, at: number) => chain.slice(0, at).some(({ thing }) => thing.kind === 'lens');

/**
 * *m₀* to which a lens of the chain is set: what is said of it, as far as it reaches; else its closest; infinity where it is turned round or another lens or
 * an objective stands before it.
 *
 * @param lens which of the possible lenses it is taken to be
 */
export function focusOf(chain: Chain, at: number, lens: Lens): number {
  const { turned, focus } = chain[at]!;
  const closest = closestMagnification(lens);
  if (focus !== undefined) return Math.min(focus, closest);
  return turned === true || isBehindGlass(chain, at) ? 0 : closest;
}

/** Between which f-numbers a lens opens and closes. */
export function fNumbersOf({ part }: Thing): { readonly least: number; readonly most: number } {
  const least = numberIn(part, 'max-aperture') ?? 1;
  return { least, most: Math.max(least, numberIn(part, 'smallest-aperture') ?? 64) };
}

/** *N* of a lens of the chain: what is said of it; else f/8, or wide open where it hangs on another lens. */
export function fNumberOf(chain: Chain, at: number): number {
  const { thing, fNumber } = chain[at]!;
  const { least, most } = fNumbersOf(thing);
  const usual = hasGlassBehind(chain, at) ? least : usualFNumber;
  return Math.min(most, Math.max(least, fNumber ?? usual));
}

/** Between what lengths bellows can be drawn out, mm. */
export function drawReach({ part }: Thing): { readonly least: number; readonly most: number } {
  return { least: numberIn(part, 'shortest')!, most: numberIn(part, 'longest')! };
}

/** Length of the bellows, mm. */
export function drawOf({ thing, extension }: Link): number {
  const { least, most } = drawReach(thing);
  return Math.min(most, Math.max(least, extension ?? least));
}

/** Where the lens nearest to the camera stands, whose focus and iris are set; -1 where there is none. */
export const mainLensAt = (chain: Chain): number => chain.findIndex(({ thing }) => thing.kind === 'lens');

/** What the engine takes, and which link of the chain each of its parts belongs to. */
export interface EngineChain {
  readonly parts: readonly Part[];
  readonly linkOf: readonly number[];
}

/**
 * The chain as the rig engine takes it: `assembleRig(engineChain(chain).parts)`.
 *
 * A close-up lens is two parts, its seat and its glass, and so is an objective on a lens, which needs an adapter.
 *
 * @param lensOf which of the possible lenses each lens is taken to be; the usual one where left out
 * @throws Error for a thing with a fault: see {@link faultIn}
 */
export function engineChain(chain: Chain, lensOf: (thing: Thing) => Lens = usualLens): EngineChain {
  const register = numberIn(chain[0]!.thing.part, 'register-distance')!;
  const parts: Part[] = [];
  const linkOf: number[] = [];
  chain.forEach((_, at) => {
    const found = partsOf(chain, at, register, lensOf);
    parts.push(...found);
    linkOf.push(...found.map(() => at));
  });
  return { parts, linkOf };
}

/** The lens that a thing is taken to be. Throws for a thing that is none. */
export function usualLens({ lenses, name }: Thing): Lens {
  if (!lenses) throw new Error(`${name} is no lens that can stand in a chain`);
  return lenses.usual;
}

/** The first link that can stand in no chain whatever is around it, or in none without a lens; and why. */
export function faultIn(chain: Chain): { readonly at: number; readonly why: string } | undefined {
  const at = chain.findIndex(({ thing }) => thing.fault !== undefined);
  if (at >= 0) return { at, why: chain[at]!.thing.fault! };
  if (chain.some(({ thing }) => limiting.includes(thing.kind))) return undefined;
  // No kit says how wide one is, which would have to limit the light.
  const thin = chain.findIndex(({ thing }) => thing.kind === 'close-up-lens' || thing.kind === 'tube-lens');
  if (thin < 0) return undefined;
  const isTubeLens = chain[thin]!.thing.kind === 'tube-lens';
  return { at: thin, why: isTubeLens ? 'put an infinity objective in front of it.' : 'it needs a lens behind it.' };
}

function partsOf(chain: Chain, at: number, registerDistance: number, lensOf: (thing: Thing) => Lens): Part[] {
  const link = chain[at]!;
  const { thing } = link;
  const { part } = thing;
  const number = (key: string) => numberIn(part, key)!;
  const rim = numberIn(part, 'rim-diameter') ?? numberIn(part, 'thread');
  const outside = rim === undefined ? {} : { rimDiameter: rim };
  const coupled = wordsIn(part, 'contacts') === 'yes';
  switch (thing.kind) {
    case 'camera':
      return [
        {
          part: 'camera',
          registerDistance,
          sensorWidth: number('sensor-width'),
          sensorHeight: number('sensor-height'),
        },
      ];
    case 'ring':
      return [{ part: 'ring', extension: number('extension'), coupled }];
    case 'reversing-ring':
    case 'coupling-ring':
      return [{ part: 'ring', extension: number('extension'), coupled: false }];
    case 'bellows': {
      const { least: shortest, most: longest } = drawReach(thing);
      return [{ part: 'bellows', extension: drawOf(link), shortest, longest, coupled: false }];
    }
    case 'converter': {
      const converterLength = number('converter-length');
      const points = converterPoints(part);
      if (points) return [{ part: 'converter by points', ...points, converterLength, coupled }];
      return [
        { part: 'converter', converterFactor: number('converter-factor'), converterLength, registerDistance, coupled },
      ];
    }
    case 'lens': {
      // What nobody has measured is taken to be the claws of its mount.
      const lens = link.turned ? { rearProtrusion: claws, ...lensOf(thing) } : lensOf(thing);
      const set = { focusMagnification: focusOf(chain, at, lens), fNumber: fNumberOf(chain, at) };
      return [{ part: 'lens', lens, ...set, ...outside, reversed: link.turned === true }];
    }
    case 'close-up-lens':
      return [
        { part: 'ring', extension: owned['close-up-seat'].extension, ...outside },
        { part: 'close-up lens', closeUpPower: number('close-up-power'), ...outside },
      ];
    case 'tube-lens':
      return [{ part: 'tube lens', focalLength: number('tube-focal-length') }];
    case 'objective':
    case 'finite-objective':
      return [
        ...(hasGlassBehind(chain, at) ? [{ part: 'ring', extension: adapter } as const] : []),
        engravedObjective(part),
      ];
  }
}
