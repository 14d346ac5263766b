import { luminanceOf } from '#core/light/srgb.ts';

/** A photograph as it is measured: how light each pixel is, row by row from the top left, coded as sRGB codes grey. */
export interface GreyPhotograph {
  readonly columns: number;
  readonly rows: number;
  readonly grey: Uint8Array;
}

/** A place in a photograph, pixels from its upper left corner: the middle of the first pixel is at (0.5, 0.5). */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** A line that somebody draws along a ruler, from one place to another. */
export interface RulerLine {
  readonly from: Place;
  readonly to: Place;
}

/** Light from 0 to 1 for each of the 256 codes: the inverse of sRGB's curve, IEC 61966-2-1:1999, section 5.2 (from memory). */
export const lightOfCode: Float32Array = /* @__PURE__ */ Float32Array.from({ length: 256 }, (_, code) => {
  const shown = code / 255;
  return shown <= 0.04045 ? shown / 12.92 : ((shown + 0.055) / 1.055) ** 2.4;
});

const fineCodes = 4096;
const codeOfLight = /* @__PURE__ */ Uint8Array.from({ length: fineCodes + 1 }, (_, step) => {
  const light = step / fineCodes;
  return Math.round(255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055));
});

/** The code of grey for light from 0 to 1; darker and lighter is cut off. */
export const greyOfLight = (light: number): number =>
  codeOfLight[Math.round(fineCodes * Math.min(1, Math.max(0, light)))]!;

const shares = /* @__PURE__ */ [0, 1, 2].map((primary) =>
  luminanceOf([Number(primary === 0), Number(primary === 1), Number(primary === 2)]),
) as [number, number, number];

/**
 * Writes the grey of a piece of a photograph, red, green, blue and one more a pixel, into the whole: the code of their luminance.
 *
 * @param rgba of the piece, *width* pixels wide
 * @param whole the photograph, with its number of columns
 * @param at where the piece's upper left corner goes
 */
export function writeGrey(
  rgba: Uint8ClampedArray,
  width: number,
  whole: Pick<GreyPhotograph, 'columns' | 'grey'>,
  at: Place,
): void {
  const [red, green, blue] = shares;
  for (let from = 0, pixel = 0; from < rgba.length; from += 4, pixel++) {
    const light =
      red * lightOfCode[rgba[from]!]! + green * lightOfCode[rgba[from + 1]!]! + blue * lightOfCode[rgba[from + 2]!]!;
    const place = (at.y + Math.floor(pixel / width)) * whole.columns + at.x + (pixel % width);
    whole.grey[place] = codeOfLight[Math.round(fineCodes * Math.min(1, light))]!;
  }
}

/** How long a line is, pixels. */
export const lengthOf = ({ from, to }: RulerLine): number => Math.hypot(to.x - from.x, to.y - from.y);

/**
 * Throws RangeError in words unless a photograph has as many pixels as it says, and a line lies in it.
 */
export function requireLineIn({ columns, rows, grey }: GreyPhotograph, { from, to }: RulerLine): void {
  if (!(
    Number.isInteger(columns) &&
    Number.isInteger(rows) &&
    columns > 0 &&
    rows > 0 &&
    grey.length === columns * rows
  ))
    throw new RangeError(`a photograph of ${columns} × ${rows} pixels has ${grey.length} of them`);
  for (const { x, y } of [from, to]) {
    if (!(x >= 0 && x <= columns && y >= 0 && y <= rows))
      throw new RangeError(`the line ends at (${x}, ${y}); accepted: a place in the photograph`);
  }
}
