import { textWidth } from '../dimension/text-width.ts';

/** Height of a title block, in text sizes. */
export const titleHeight = 1.7;

export function titleCells(title: string, scale: string | undefined, unit: string): string[] {
  // A plot's axes name their units: it gives none.
  return [title, scale === undefined ? '' : `scale ${scale}`, unit].filter((cell) => cell !== '');
}

export function cellWidth(cell: string, size: number): number {
  return textWidth(cell, size) + 1.1 * size;
}

/** *cells* as far as they fit into *room*, pixels: what is drawn stays longest, the cell after it goes first. */
export function cellsThatFit(cells: readonly string[], size: number, room: number): readonly string[] {
  const width = cells.reduce((sum, cell) => sum + cellWidth(cell, size), 0);
  return width <= room || cells.length === 1 ? cells : cellsThatFit([cells[0]!, ...cells.slice(2)], size, room);
}

/** How wide the whole block is, pixels. */
export function titleWidth(title: string, scale: string | undefined, unit: string, size: number): number {
  return titleCells(title, scale, unit).reduce((sum, cell) => sum + cellWidth(cell, size), 0);
}
