import type { SheetBox } from '#site/controls/workbench/workbench.ts';

/** Millimetres that are drawn of the stamp's side: a little more of the ruler than the stamp is wide. */
const drawn = { stamp: 46, sensor: 38, gap: 10, height: 40 };

/** Where stamp and sensor lie, pixels, and how many pixels a millimetre has: the same for both. */
export interface StampLayout {
  readonly pixels: number;
  readonly stamp: { readonly x: number; readonly y: number };
  readonly sensor: { readonly x: number; readonly y: number };
}

/** Side by side where there is width for it, else one above the other; each given by its middle. */
export function stampLayout({ width, height, text }: Pick<SheetBox, 'width' | 'height' | 'text'>): StampLayout {
  const isWide = width > 1.25 * height;
  // Room for the names above and for the rule below.
  const free = { width: width - 2 * text, height: height - 4.5 * text };
  const across = isWide ? drawn.stamp + drawn.gap + drawn.sensor : drawn.stamp;
  const down = isWide ? drawn.height : 2 * drawn.height - 8;
  const pixels = Math.min(free.width / across, free.height / down);
  const middle = { x: width / 2, y: 2 * text + free.height / 2 };
  const apart = isWide ? (drawn.stamp + drawn.sensor) / 4 + drawn.gap / 2 : (drawn.height - 8) / 2;
  const at = (side: 1 | -1) =>
    isWide
      ? { x: middle.x + side * apart * pixels, y: middle.y }
      : { x: middle.x, y: middle.y + side * apart * pixels };
  return { pixels, stamp: at(-1), sensor: at(1) };
}
