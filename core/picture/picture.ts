/** What a sensor recorded, in linear light; upright as the subject. */
export interface Picture {
  readonly columns: number;
  readonly rows: number;
  /** 3: red, green, blue of linear sRGB; 1: luminance alone */
  readonly channels: 1 | 3;
  /** One plane a channel, row by row from the top left; 1 is a white surface fully lit. Highlights may exceed it. */
  readonly light: Float32Array;
}

/** How many columns, rows and channels. */
export type Shape = Pick<Picture, 'columns' | 'rows' | 'channels'>;
