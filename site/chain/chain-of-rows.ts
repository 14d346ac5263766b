import type { Part } from '#core/rig/part.ts';
import { ownParts } from '#site/state/own-parts.svelte.ts';
import type { Chain } from './chain.ts';
import { crateThing } from './crate-things.ts';
import type { Thing } from './thing.ts';

/** The thing that a row of a searched kit stands for: a part of the reader's own, or of the crate. Throws where there is none. */
const thingOf = (id: string): Thing => ownParts.found?.things[id] ?? crateThing(id.replace(/^second-/, ''));

/** Significant ones of a setting: on long chains the room moves a hundred times as far as the setting. */
const digits = 9;

/** The camera that a search on the reader's own kit puts its chains on, for such a sensor, mm; undefined where none is kept. */
export function ownCamera(sensorWidth: number): Thing | undefined {
  const cameras = ownParts.found?.cameras ?? [];
  return (cameras.find((camera) => camera.sensorWidth === sensorWidth) ?? cameras[0])?.thing;
}

/**
 * What a search has found as a chain that can be written into an address: the same parts, a lens behind a reversing or coupling ring turned round.
 *
 * @param ids names of the rows from the camera outwards, the camera first
 * @param parts the same as the engine takes them, for how each is set; without them nothing is set
 */
export function chainOfRows(camera: Thing, ids: readonly string[], parts?: readonly Part[]): Chain {
  const things = ids.slice(1).map(thingOf);
  return [
    { thing: camera },
    ...things.map((thing, at) => {
      const before = things[at - 1]?.kind;
      const isTurned = thing.kind === 'lens' && (before === 'reversing-ring' || before === 'coupling-ring');
      const part = parts?.[at + 1];
      const set = part?.part === 'lens' && {
        focus: Number(part.focusMagnification.toPrecision(digits)),
        fNumber: Number(part.fNumber.toPrecision(digits)),
      };
      return { thing, ...(isTurned && { turned: true }), ...set };
    }),
  ];
}
