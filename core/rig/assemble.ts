import { ImpossibleChain, mount, nothingMounted } from './impossible-chain.ts';
import type { Part } from './part.ts';
import { place, type Build } from './place.ts';
import type { PartPlace, Rig } from './rig.ts';

/**
 * Puts a chain together: checks that it can be built, and finds every principal plane and every stop its place.
 *
 * @param parts the camera first, the foremost last
 * @returns the rig, to be solved
 * @throws ImpossibleChain where a part cannot stand where it stands, where no glass is there, or nothing limits the light
 * @throws OutOfRange for a number out of range, by the name of its quantity
 *
 * Source: derived in [README](README.md#a-chain).
 */
export function assembleRig(parts: readonly Part[]): Rig {
  const camera = parts[0];
  const mounted = nothingMounted();
  const build: Build = { end: 0, foremost: 0, lastH: 0, standsOut: 0, coupled: true, elements: [] };
  const places: PartPlace[] = [];
  for (let index = 0; index < parts.length; index++) {
    const part = parts[index] as Part;
    const from = build.end;
    mount(mounted, part, index);
    place(build, part, index);
    places.push({ from, to: build.end, foremost: build.end + build.standsOut });
    build.foremost = Math.max(build.foremost, build.end + build.standsOut);
    build.standsOut = 0;
  }
  const { elements, foremost, lastH } = build;
  const last = Math.max(0, parts.length - 1);
  if (camera?.part !== 'camera') throw new ImpossibleChain(0, 'nothing', 'a chain starts with its camera');
  if (elements.length === 0) throw new ImpossibleChain(last, parts[last]!.part, 'a chain needs a lens');
  if (!elements.some(({ power }) => power > 0)) {
    throw new ImpossibleChain(last, parts[last]!.part, 'a converter needs a lens in front of it');
  }
  if (!elements.some(({ exitRadius }) => exitRadius < Infinity)) {
    throw new ImpossibleChain(
      last,
      parts[last]!.part,
      'nothing limits the light: give one of the lenses its clear aperture',
    );
  }
  return { parts, places, camera, elements, frontGap: foremost - lastH, length: foremost };
}
