declare module 'subset-font' {
  function subsetFont(
    font: Buffer,
    text: string,
    options: {
      targetFormat: 'truetype';
      variationAxes?: Record<string, number | { min: number; max: number }>;
      /** Four letters each, as OpenType names features; the others are left out. */
      keepFeatures?: readonly string[];
      noHinting?: boolean;
      /** Four letters each, as OpenType names tables. */
      dropTables?: readonly string[];
    },
  ): Promise<Buffer>;
  export { subsetFont as default };
}

declare module 'fontverter' {
  /** The font in the other format. */
  export function convert(font: Buffer, format: 'truetype' | 'woff2'): Promise<Buffer>;
}
