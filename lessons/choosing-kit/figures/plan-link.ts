import { lenses } from '#site/state/crate.ts';
import type { Asked } from './searches.ts';

/** A chain as it was set for the subject. */
interface SetChain {
  /** From the camera outwards, the camera first. */
  readonly ids: readonly string[];
  readonly magnification: number;
  readonly fNumber: number;
}

/** What was chosen, not typed. */
interface Chosen {
  readonly subject: string | undefined;
  readonly sensor: string | undefined;
  readonly isByFlash: boolean;
}

const plain = (value: number) => `${Number(value.toPrecision(6))}`;

/**
 * Where the lesson on planning takes a chain over with its numbers, if it is one that can be planned there: a lens of the crate, by itself or on
 * rings, that shows the subject. The stand-in for a flash is no daylight, and is left out.
 */
export function planLink({ ids, magnification, fNumber }: SetChain, asked: Asked, chosen: Chosen): string | undefined {
  const parts = ids.slice(1);
  const lens = parts.find((id) => id in lenses);
  if (lens === undefined || !(magnification > 0 && fNumber > 0)) return undefined;
  if (parts.some((id) => id !== lens && !/^(?:second-)?ring-\d+$/.test(id))) return undefined;
  const fill = Math.min(1, (magnification * asked.subjectWidth) / asked.sensorWidth);
  const { subject = 'own', sensor } = chosen;
  const entries: Readonly<Record<string, string>> = {
    subject,
    lens,
    ...(sensor === undefined ? { 'sensor-width': plain(asked.sensorWidth) } : { sensor }),
    'frame-fill': plain(fill),
    'subject-width': plain(asked.subjectWidth),
    'subject-depth': plain(asked.subjectDepth),
    'subject-speed': plain(asked.subjectSpeed),
    'flight-distance': plain(asked.nearestWorkingDistance),
    'f-number': plain(fNumber),
    iso: plain(asked.iso),
    ...(!chosen.isByFlash && { luminance: plain(asked.luminance) }),
  };
  return `../planning-a-picture/?${new URLSearchParams(entries).toString()}`;
}
