import type { Part } from '#core/rig/part.ts';
import { addressOfChain } from '#site/chain/chain-in-text.ts';
import { chainOfRows, ownCamera } from '#site/chain/chain-of-rows.ts';
import { crateThing } from '#site/chain/crate-things.ts';
import type { KitSlug } from '#site/state/kits.ts';
import type { Asked } from './searches.ts';

/** A chain as it was set for the subject. */
interface SetChain {
  /** From the camera outwards, the camera first. */
  readonly ids: readonly string[];
  readonly parts: readonly Part[];
  readonly magnification: number;
  readonly fNumber: number;
}

/** What was chosen, not typed. */
export interface Chosen {
  readonly kit: KitSlug;
  readonly subject: string | undefined;
  readonly sensor: string | undefined;
  readonly isByFlash: boolean;
  readonly isStack: boolean;
}

/** To so many digits that the plan finds the room of the list to the last one that it prints. */
const plain = (value: number) => `${Number(value.toPrecision(9))}`;

/** The camera of a chain: of the reader's own kit, or of the crate; for a sensor by its numbers, the crate's first, which has the crate's mount. */
const cameraOf = ({ kit, sensor }: Chosen, { sensorWidth }: Asked) =>
  (kit === 'own' ? ownCamera(sensorWidth) : undefined) ?? crateThing(sensor ?? 'body-36');

/**
 * Where the lesson on planning takes a chain over with its numbers; none for one that shows no picture. The chain is spelled out, and set there for the
 * size that it has here. The stand-in for a flash is no daylight, and is left out.
 */
export function planLink({ ids, magnification, fNumber }: SetChain, asked: Asked, chosen: Chosen): string | undefined {
  if (!(magnification > 0 && fNumber > 0)) return undefined;
  const fill = Math.min(1, (magnification * asked.subjectWidth) / asked.sensorWidth);
  const { subject = 'own', sensor } = chosen;
  const entries: Readonly<Record<string, string>> = {
    subject,
    ...(sensor === undefined ? { 'sensor-width': plain(asked.sensorWidth) } : { sensor }),
    'frame-fill': plain(fill),
    'subject-width': plain(asked.subjectWidth),
    'subject-depth': plain(asked.subjectDepth),
    'subject-speed': plain(asked.subjectSpeed),
    'flight-distance': plain(asked.nearestWorkingDistance),
    'f-number': plain(fNumber),
    iso: plain(asked.iso),
    ...(!chosen.isByFlash && { luminance: plain(asked.luminance) }),
    question: '2',
  };
  const chain = addressOfChain(chainOfRows(cameraOf(chosen, asked), ids));
  return `../planning-a-picture/?${new URLSearchParams(entries).toString()}&chain=${chain}`;
}

/** Where the bench has a chain as it was set; none on a camera that is neither in the crate nor of the reader's own. */
export function benchLink({ ids, parts }: SetChain, asked: Asked, chosen: Chosen): string | undefined {
  if (chosen.kit !== 'own' && chosen.sensor === undefined) return undefined;
  return `../../bench/?chain=${addressOfChain(chainOfRows(cameraOf(chosen, asked), ids, parts))}`;
}
