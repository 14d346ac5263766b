import type { Picture, Shape } from './picture.ts';

/** Throws RangeError unless a picture has the shape wanted and as much light as it says. Returns it, for use inline. */
export function requireShape(picture: Picture, { columns, rows, channels }: Shape): Picture {
  const wanted = `${columns} × ${rows} pixels in ${channels} channel${channels === 1 ? '' : 's'}`;
  if (picture.columns !== columns || picture.rows !== rows || picture.channels !== channels)
    throw new RangeError(
      `a picture of ${picture.columns} × ${picture.rows} pixels in ${picture.channels} does not go with one of ${wanted}`,
    );
  if (picture.light.length !== columns * rows * channels)
    throw new RangeError(`a picture of ${wanted} has ${picture.light.length} values of light`);
  return picture;
}
