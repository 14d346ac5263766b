declare module 'subset-font' {
  function subsetFont(
    font: Buffer,
    text: string,
    options: { targetFormat: 'woff2'; variationAxes?: Record<string, number | { min: number; max: number }> },
  ): Promise<Buffer>;
  export { subsetFont as default };
}
