/** A picture being put together from the front to the back. All planes have the grid's size without its rim. */
export interface Layers {
  readonly columns: number;
  readonly rows: number;
  /** light gathered so far, a plane a channel */
  readonly light: readonly Float32Array[];
  /** share of the aperture that no surface before the present one has closed */
  readonly open: Float32Array;
  /** share of it that the present surface has not closed either */
  readonly left: Float32Array;
}

/** Nothing gathered yet, and the whole aperture open. */
export function emptyLayers(columns: number, rows: number, channels: number): Layers {
  const plane = () => new Float32Array(columns * rows);
  return {
    columns,
    rows,
    light: Array.from({ length: channels }, plane),
    open: plane().fill(1),
    left: plane().fill(1),
  };
}

/** A blurred slice: where its planes begin on the grid, and its part that is wanted. */
export interface Blurred {
  readonly columns: number;
  readonly left: number;
  readonly top: number;
  readonly light: readonly Float32Array[];
  readonly coverage: Float32Array;
  readonly wanted: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
}

/**
 * Lays a slice of the present surface behind those of it that were laid before.
 *
 * Slices of one surface fit together as the pieces of a broken plate: each takes what the nearer ones have left of the aperture and
 * no more. So a slope's slices add up without a seam, and light of what lies deeper cannot spread over a nearer edge that is sharp.
 */
export function compositeSlice(layers: Layers, slice: Blurred): void {
  const { wanted, coverage } = slice;
  const { left, open } = layers;
  const width = wanted.right - wanted.left;
  const shares = new Float32Array(width);
  for (let row = wanted.top; row < wanted.bottom; row++) {
    const to = row * layers.columns + wanted.left;
    const from = (row - slice.top) * slice.columns + wanted.left - slice.left;
    for (let column = 0; column < width; column++) {
      const covered = coverage[from + column]!;
      const room = left[to + column]!;
      const taken = covered > room ? room : covered;
      shares[column] = covered > room ? (open[to + column]! * room) / covered : open[to + column]!;
      left[to + column] = room - taken;
    }
    for (let channel = 0; channel < slice.light.length; channel++) {
      const plane = layers.light[channel]!;
      const light = slice.light[channel]!;
      for (let column = 0; column < width; column++)
        plane[to + column] = plane[to + column]! + shares[column]! * light[from + column]!;
    }
  }
}

/**
 * Closes a surface: what it left open is open for the next one.
 *
 * Surfaces do not fit together, they stand behind each other: a share of the aperture that two would close is closed by the first.
 */
export function closeSurface({ open, left }: Layers): void {
  for (let at = 0; at < open.length; at++) {
    open[at] = open[at]! * Math.min(1, left[at]!);
    left[at] = 1;
  }
}

/** Where no surface at all closes the whole aperture, those that were met stand for what was not. */
export function fillOpen({ light, open }: Layers): void {
  for (let at = 0; at < open.length; at++) {
    const met = 1 - open[at]!;
    if (met < 0.01) continue;
    for (const plane of light) plane[at] = plane[at]! / met;
  }
}
