import type { Radix, Stage } from './fft-plan.ts';
import type { Scratch } from './scratch.ts';
import { butterflyModule, radices } from './wasm-butterflies.ts';

type Pass = (
  re: number,
  im: number,
  otherRe: number,
  otherIm: number,
  twiddles: number,
  parts: number,
  stride: number,
) => void;

/** Room for so many numbers in each of the scratch's four arrays, and for as many twiddles. */
const capacity = 4096 * 32;
const page = 65536;

let made: Scratch | undefined;
let refused = false;

/**
 * A scratch whose transforms are computed four numbers at a time, by vector instructions in WebAssembly.
 *
 * @param size how many numbers each of its arrays has to hold
 * @returns undefined where the size is too large or the surroundings refuse: an old browser, or a content policy without
 *   `wasm-unsafe-eval`. A worker has the policy its script was sent with, not that of the page.
 */
export function vectorScratch(size: number): Scratch | undefined {
  if (size > capacity || refused) return undefined;
  try {
    return (made ??= vectorScratchMade());
  } catch {
    refused = true;
    return undefined;
  }
}

function vectorScratchMade(): Scratch {
  const memory = new WebAssembly.Memory({ initial: (5 * 4 * capacity) / page, maximum: (5 * 4 * capacity) / page });
  const module = new WebAssembly.Module(butterflyModule());
  const { exports } = new WebAssembly.Instance(module, { room: { memory } });
  const passes = Object.fromEntries(radices.map((radix) => [radix, exports[radix]])) as unknown as Record<Radix, Pass>;
  const array = (k: number) => new Float32Array(memory.buffer, 4 * capacity * k, capacity);
  const twiddlesOf = keeper(array(4));
  const run = (scratch: Scratch, stage: Stage, stride: number) =>
    passes[stage.radix](
      scratch.re.byteOffset,
      scratch.im.byteOffset,
      scratch.otherRe.byteOffset,
      scratch.otherIm.byteOffset,
      twiddlesOf(stage),
      stage.parts,
      4 * stride,
    );
  return { re: array(0), im: array(1), otherRe: array(2), otherIm: array(3), run };
}

/** Copies twiddles once to where the passes can read them; starts again where the room is used up. */
function keeper(room: Float32Array): (stage: Stage) => number {
  let addresses = new Map<Stage, number>();
  let used = 0;
  return (stage) => {
    const known = addresses.get(stage);
    if (known !== undefined) return known;
    if (used + stage.twiddles.length > room.length) {
      addresses = new Map();
      used = 0;
    }
    room.set(stage.twiddles, used);
    const address = room.byteOffset + 4 * used;
    addresses.set(stage, address);
    used += stage.twiddles.length;
    return address;
  };
}
