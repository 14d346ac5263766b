import type { Cone, RimPoint } from './cone.ts';

/** Where a row of a drawing has its axis and its sensor, pixels, and how many pixels a millimetre takes. */
export interface Row {
  readonly sensorX: number;
  readonly axisY: number;
  readonly scale: number;
}

/** Real cones are slim: heights are drawn so many times as large as lengths, in all of them alike. */
export const stretch = 3;

export const xAt = ({ sensorX, scale }: Row, at: number) => sensorX + at * scale;

/** The cone as a closed path, from the sensor out to the opening. */
export function conePath(row: Row, rim: readonly RimPoint[]): string {
  const side = (sign: 1 | -1, points: readonly RimPoint[]) =>
    points.map(({ at, half }) => `L${px(xAt(row, at))} ${px(row.axisY + sign * half * stretch * row.scale)}`).join('');
  return `M${px(row.sensorX)} ${px(row.axisY)}${side(-1, rim)}${side(1, rim.toReversed())}z`;
}

/** The two edges of the iris above and below an opening, as strokes that leave it free. */
export function irisPath(row: Row, { at, half }: RimPoint, reach: number): string {
  const [x, inner] = [px(xAt(row, at)), half * stretch * row.scale];
  const outer = inner + reach;
  return `M${x} ${px(row.axisY - inner)}V${px(row.axisY - outer)}M${x} ${px(row.axisY + inner)}V${px(row.axisY + outer)}`;
}

/** From the sensor on: the rim of a cone, with a bend where there is a converter. */
export const rimOf = ({ pupil, converter }: Cone): readonly RimPoint[] => (converter ? [converter, pupil] : [pupil]);

const px = (length: number) => length.toFixed(1);
