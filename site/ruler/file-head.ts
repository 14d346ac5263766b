/** Kinds of files by how they begin, for a sentence that says what a file is. */
const beginnings: readonly (readonly [name: string, at: number, bytes: readonly number[]])[] = [
  ['a PDF', 0, [0x25, 0x50, 0x44, 0x46]],
  ['a ZIP archive', 0, [0x50, 0x4b, 0x03, 0x04]],
  ['a film', 4, [0x66, 0x74, 0x79, 0x70]],
];

/** What a file seems to be whose format no picture's is. */
export function seemingKind(bytes: Uint8Array): string {
  if (bytes.length === 0) return 'an empty file';
  const found = beginnings.find(([, at, wanted]) => wanted.every((byte, index) => bytes[at + index] === byte));
  if (found) return found[0];
  const head = bytes.subarray(0, 512);
  const isText = head.every((byte) => byte === 9 || byte === 10 || byte === 13 || (byte >= 32 && byte !== 127));
  return isText ? 'a text' : 'no picture that this page knows';
}

/** Whether a JPEG goes on to its end mark. */
export function isWholeJpeg(bytes: Uint8Array): boolean {
  for (let at = bytes.length - 2; at >= 0; at--) if (bytes[at] === 0xff && bytes[at + 1] === 0xd9) return true;
  return false;
}
