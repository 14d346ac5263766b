import type { Surface } from './prescription.ts';

/** A ray close to the axis: its height, and its slope times the index it runs in. */
interface ParaxialRay {
  readonly height: number;
  readonly slope: number;
}

/** What a stack of surfaces does to rays close to the axis. */
export type GlassMatrix = Readonly<Record<'A' | 'B' | 'C' | 'D', number>>;

/**
 * [[A, B], [C, D]] of the surfaces from place *from* up to, without, place *to*: from height and slope times index in front of the first
 * vertex to the same just behind the last, or in the vertex plane of the next surface where there is one.
 */
export function glassMatrix(surfaces: readonly Surface[], from: number, to: number, indexBefore: number): GlassMatrix {
  const after = (ray: ParaxialRay) => {
    let { height, slope } = ray;
    for (let index = from; index < to; index++) {
      const { radius, index: behind, thickness } = surfaces[index] as Surface;
      const before = index === 0 ? indexBefore : (surfaces[index - 1] as Surface).index;
      slope -= (height * (behind - before)) / radius;
      if (index < surfaces.length - 1) height += (thickness * slope) / behind;
    }
    return { height, slope };
  };
  const parallel = after({ height: 1, slope: 0 });
  const axial = after({ height: 0, slope: 1 });
  return { A: parallel.height, B: axial.height, C: parallel.slope, D: axial.slope };
}
