/** Little-endian bytes of a number. */
const bytes = (value: number, count: number) =>
  Array.from({ length: count }, (_, index) => (value >>> (8 * index)) & 0xff);

/** Bytes before the rows: two headers and a table of 256 greys. */
const headed = 54 + 4 * 256;

/**
 * A square picture of greys as an address that an image can show: a bitmap, the plainest file there is.
 *
 * @param side pixels, a multiple of 4
 * @param levelAt of a pixel counted from the left and from the top, 0 to 255
 */
export function greyImage(side: number, levelAt: (column: number, row: number) => number): string {
  const size = side * side;
  const file = new Uint8Array(headed + size);
  file.set([0x42, 0x4d, ...bytes(headed + size, 4), 0, 0, 0, 0, ...bytes(headed, 4)]);
  file.set([...bytes(40, 4), ...bytes(side, 4), ...bytes(side, 4), 1, 0, 8, 0, ...bytes(0, 4), ...bytes(size, 4)], 14);
  file.set([...bytes(0, 8), ...bytes(256, 4), ...bytes(0, 4)], 38);
  for (let grey = 0; grey < 256; grey++) file.set([grey, grey, grey, 0], 54 + 4 * grey);
  // Rows go from the lowest to the highest.
  for (let row = 0; row < side; row++)
    for (let column = 0; column < side; column++)
      file[headed + (side - 1 - row) * side + column] = levelAt(column, row);
  let text = '';
  for (const byte of file) text += String.fromCharCode(byte);
  return `data:image/bmp;base64,${btoa(text)}`;
}
