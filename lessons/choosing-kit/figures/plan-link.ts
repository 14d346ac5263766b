import type { Part } from '#core/rig/part.ts';
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

/**
 * Where the bench has a chain of the crate's things as it was set; none on a camera that is not in the crate, nor of a kit of one's own.
 *
 * @param ids from the camera outwards, the camera first, as *parts* are
 */
export function benchLink(
  ids: readonly string[],
  parts: readonly Part[],
  sensor: string | undefined,
): string | undefined {
  if (sensor === undefined || ids.some((id) => id.startsWith('my-'))) return undefined;
  const links = ids.slice(1).map((id, index) => {
    const part = parts[index + 1]!;
    const set =
      part.part === 'lens'
        ? [
            ...(part.reversed ? ['turned'] : []),
            part.focusMagnification === 0 ? 'far' : `m${plain(part.focusMagnification)}`,
            `f${plain(part.fNumber)}`,
          ]
        : [];
    return [id.replace(/^second-/, ''), ...set].join(':');
  });
  return `../../bench/?chain=${[sensor, ...links].join(',')}`;
}
