import type { Named } from '#core/quantity/formula.ts';
import type { Part } from '#core/rig/part.ts';
import { cameraPart, drawnWithRim, lensPart } from '#site/figures/side-view/lens-on-camera.ts';
import { rings as owned } from '#site/state/crate.ts';

/** What of the bench the chain is put together from. */
export const ofChain = [
  'focal-length',
  'focus-magnification',
  'f-number',
  'pupil-magnification',
  'front-principal-depth',
  'principal-separation',
  'sensor-width',
] as const;
type Given = Readonly<Named<(typeof ofChain)[number]>>;

const subsets = owned.reduce<number[][]>((all, ring) => [...all, ...all.map((some) => [...some, ring])], [[]]);
const sum = (lengths: readonly number[]) => lengths.reduce((total, length) => total + length, 0);

/** A ring to be put in: one of the crate's, or of the reader's own. */
export interface RingToPick {
  readonly id: string;
  readonly length: number;
  readonly isOwn: boolean;
}

/** The rings there are, the reader's own first. */
export function ringsToPick(ownLengths: readonly number[]): readonly RingToPick[] {
  return [
    ...ownLengths.map((length, at) => ({ id: `own-${at}`, length, isOwn: true })),
    ...owned.map((length) => ({ id: `${length}`, length, isOwn: false })),
  ];
}

/** The rings that make up an extension: those picked where they do, else some of the crate's, or none. */
export function ringsInUse(
  extension: number,
  picked: readonly string[],
  rings: readonly RingToPick[],
): readonly RingToPick[] {
  const lengthOf = (some: readonly RingToPick[]) => sum(some.map(({ length }) => length));
  const chosen = rings.filter(({ id }) => picked.includes(id));
  if (lengthOf(chosen) === extension) return chosen;
  const lengths = subsets.find((some) => sum(some) === extension) ?? [];
  return rings.filter(({ length, isOwn }) => !isOwn && lengths.includes(length));
}

/** Where everything stands with these rings between camera and lens, and what cannot be as the numbers have it. */
export function extensionChain(given: Given, extension: number, rings: readonly number[]) {
  const tubes = sum(rings) === extension ? rings : [extension];
  const parts: Part[] = [
    cameraPart(given.sensorWidth),
    ...tubes.map((length): Part => ({ part: 'ring', extension: length })),
  ];
  return {
    lensAt: parts.length,
    ...drawnWithRim(given, (frontPrincipalDepth) => [...parts, lensPart({ ...given, frontPrincipalDepth })]),
  };
}
