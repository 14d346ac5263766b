/** What a camera writes into a JPEG, as far as tests want it. */
export interface ExifOfTest {
  /** How the picture is to be turned: 1 not at all, 6 a quarter turn clockwise. */
  readonly orientation?: number;
  /** As numerator and denominator. */
  readonly focalLength?: readonly [number, number];
  readonly fNumber?: readonly [number, number];
  readonly pixels?: readonly [across: number, down: number];
  /** Pixels a centimetre of the focal plane. */
  readonly perCentimetre?: readonly [number, number];
}

type Entry = readonly [tag: number, type: 3 | 4 | 5, value: number | readonly [number, number]];

/** The JPEG with a segment of Exif data behind its first mark (CIPA DC-008, big-endian TIFF). */
export function withExif(jpeg: Uint8Array, said: ExifOfTest): Uint8Array {
  const exif: Entry[] = [
    ...(said.fNumber ? [[0x829d, 5, said.fNumber] as const] : []),
    ...(said.focalLength ? [[0x920a, 5, said.focalLength] as const] : []),
    ...(said.pixels ? [[0xa002, 4, said.pixels[0]] as const, [0xa003, 4, said.pixels[1]] as const] : []),
    ...(said.perCentimetre
      ? [[0xa20e, 5, said.perCentimetre] as const, [0xa20f, 5, said.perCentimetre] as const, [0xa210, 3, 3] as const]
      : []),
  ];
  const first: Entry[] = [[0x0112, 3, said.orientation ?? 1]];
  const firstSize = 2 + 12 * (first.length + 1) + 4;
  const exifStart = 8 + firstSize;
  const dataStart = exifStart + 2 + 12 * exif.length + 4;
  const rationals = exif.filter(([, type]) => type === 5).length;
  const tiff = new Uint8Array(dataStart + 8 * rationals);
  const view = new DataView(tiff.buffer);
  let data = dataStart;
  const write = (at: number, entries: readonly Entry[]) => {
    view.setUint16(at, entries.length);
    entries.forEach(([tag, type, value], index) => {
      const place = at + 2 + 12 * index;
      view.setUint16(place, tag);
      view.setUint16(place + 2, type);
      view.setUint32(place + 4, 1);
      if (type === 3) view.setUint16(place + 8, value as number);
      else if (type === 4) view.setUint32(place + 8, value as number);
      else {
        view.setUint32(place + 8, data);
        view.setUint32(data, (value as readonly [number, number])[0]);
        view.setUint32(data + 4, (value as readonly [number, number])[1]);
        data += 8;
      }
    });
  };
  tiff.set([0x4d, 0x4d, 0, 42, 0, 0, 0, 8]);
  write(8, [...first, [0x8769, 4, exifStart]]);
  write(exifStart, exif);
  const segment = new Uint8Array(10 + tiff.length);
  segment.set([0xff, 0xe1]);
  new DataView(segment.buffer).setUint16(2, 8 + tiff.length);
  segment.set([0x45, 0x78, 0x69, 0x66, 0, 0], 4);
  segment.set(tiff, 10);
  const made = new Uint8Array(jpeg.length + segment.length);
  made.set(jpeg.subarray(0, 2));
  made.set(segment, 2);
  made.set(jpeg.subarray(2), 2 + segment.length);
  return made;
}
