import type { Surface } from './prescription.ts';

/** What a stack of surfaces does to rays close to the axis. */
export type GlassMatrix = Readonly<Record<'A' | 'B' | 'C' | 'D', number>>;

/**
 * [[A, B], [C, D]] of the surfaces from place *from* up to, without, place *to*: from height and slope times index in front of the first
 * vertex to the same just behind the last, or in the vertex plane of the next surface where there is one.
 */
export function glassMatrix(surfaces: readonly Surface[], from: number, to: number, indexBefore: number): GlassMatrix {
  // The columns: a ray that comes in at height 1 along the axis, and one from the axis at slope times index 1.
  let [A, B, C, D] = [1, 0, 0, 1];
  let before = from === 0 ? indexBefore : (surfaces[from - 1] as Surface).index;
  for (let place = from; place < to; place++) {
    const { radius, index, thickness } = surfaces[place] as Surface;
    const power = (index - before) / radius;
    C -= A * power;
    D -= B * power;
    if (place < surfaces.length - 1) {
      const gap = thickness / index;
      A += gap * C;
      B += gap * D;
    }
    before = index;
  }
  return { A, B, C, D };
}
