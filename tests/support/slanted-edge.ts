import type { Picture } from '#core/picture/picture.ts';

/** Bins per pixel in which rows are put together. */
const bins = 4;

/**
 * The contrast left at each frequency, read from the picture of one straight edge that leans a little from the columns.
 *
 * The method of ISO 12233, annex on slanted edges (from memory), for tests: the middle of each row's change of light, a straight line through these
 * middles, all rows sorted by their distance from it into quarters of a pixel, the differences of neighbouring quarters, the size of their
 * Fourier transform, with what quarters and differences take away put back.
 *
 * @param half how far on either side of the edge is looked at, pixels
 * @param frequencies in cycles per pixel; above half a cycle too, since rows at many distances sample more finely than one does
 */
export function slantedEdgeContrast(picture: Picture, half: number, frequencies: readonly number[]): number[] {
  const { columns, rows, light } = picture;
  const { start, slope } = edgeOf(picture, half / 2);
  const upright = 1 / Math.hypot(1, slope);

  const sums = new Float64Array(2 * half * bins);
  const counts = new Float64Array(2 * half * bins);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const bin = Math.floor(((column - start - slope * row) * upright + half) * bins);
      if (bin < 0 || bin >= sums.length) continue;
      sums[bin] = sums[bin]! + light[row * columns + column]!;
      counts[bin] = counts[bin]! + 1;
    }
  }
  const edge = sums.map((sum, bin) => sum / counts[bin]!);
  const line = edge.slice(1).map((value, bin) => value - edge[bin]!);
  const whole = line.reduce((sum, value) => sum + value, 0);
  return frequencies.map((frequency) => {
    const turn = (2 * Math.PI * frequency) / bins;
    let [re, im] = [0, 0];
    line.forEach((value, bin) => {
      re += value * Math.cos(turn * bin);
      im -= value * Math.sin(turn * bin);
    });
    const half = turn / 2;
    const takenAway = half === 0 ? 1 : (Math.sin(half) / half) ** 2;
    return Math.hypot(re, im) / Math.abs(whole) / takenAway;
  });
}

/** The line of the edge: first from whole rows, then twice from what a window around the last line shows. */
function edgeOf({ columns, rows, light }: Picture, half: number): { start: number; slope: number } {
  let line = { start: columns / 2, slope: 0 };
  for (const reach of [columns, half, half]) {
    const middles = Array.from({ length: rows }, (_, row) =>
      middleOf(light.subarray(row * columns, (row + 1) * columns), line.start + line.slope * row, reach),
    );
    line = lineThrough(middles);
  }
  return line;
}

/** Centre of gravity of a row's differences, seen through a Hamming window: an edge's far tails would pull it to the longer side. */
function middleOf(row: Float32Array, centre: number, reach: number): number {
  let [moment, change] = [0, 0];
  for (let column = 1; column < row.length; column++) {
    const away = (column - 0.5 - centre) / reach;
    if (Math.abs(away) > 1) continue;
    const difference = (row[column]! - row[column - 1]!) * (0.54 + 0.46 * Math.cos(Math.PI * away));
    moment += difference * (column - 0.5);
    change += difference;
  }
  return moment / change;
}

/** Least squares over 0, 1, 2, ... */
function lineThrough(values: readonly number[]): { start: number; slope: number } {
  const middle = (values.length - 1) / 2;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  let [moment, spread] = [0, 0];
  values.forEach((value, row) => {
    moment += (row - middle) * (value - mean);
    spread += (row - middle) ** 2;
  });
  return { start: mean - (moment / spread) * middle, slope: moment / spread };
}
