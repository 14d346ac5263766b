import { writeGrey, type GreyPhotograph } from '#core/ruler/photograph.ts';
import { isWholeJpeg, seemingKind } from './file-head.ts';
import type { SaidByFile } from './messages.ts';
import { headOf } from './said-by-file.ts';

/** A photograph, decoded: what is measured, what is shown, and what its file says. */
export interface OpenedPhotograph {
  readonly photograph: GreyPhotograph;
  readonly preview: ImageBitmap;
  readonly said: SaidByFile;
  /** A sentence to the reader; '' where there is nothing to say. */
  readonly note: string;
}

/** A file that cannot be opened, with a sentence that says why and what to do. */
export class RefusedFile extends Error {
  override readonly name = 'RefusedFile';
}

/** More pixels than that do not fit into a phone's memory beside everything else. */
const mostPixels = 130e6;
const largestFile = 200e6;
/** On fewer along its shorter side no line finds marks. */
const fewestPixels = 16;
/** Of the picture as it is shown, its longer side. */
const previewSide = 1800;
/** Pixels are read in squares of this side: no canvas of any browser is too small for it. */
const tile = 2048;

/** Decodes a file, turned upright as it says. Runs in a worker; nothing of it leaves the machine. */
export async function openPhotograph(file: Blob): Promise<OpenedPhotograph> {
  if (file.size > largestFile)
    throw new RefusedFile(`This file has ${millions(file.size)} MB. Up to ${millions(largestFile)} MB can be opened.`);
  const data = await file.arrayBuffer();
  const head = headOf(data);
  const { format, columns = 0, rows = 0, said } = head;
  if (format === undefined || format === 'XML') {
    throw new RefusedFile(
      `This file is ${seemingKind(new Uint8Array(data))}, whatever its name says. A JPEG, PNG or WebP picture can be opened.`,
    );
  }
  if (columns * rows > mostPixels) throw tooLarge(columns, rows);
  const bitmap = await decoded(file, format);
  try {
    const { width, height } = bitmap;
    if (width * height > mostPixels) throw tooLarge(width, height);
    if (Math.min(width, height) < fewestPixels) {
      throw new RefusedFile(
        `This picture has ${width} × ${height} pixels, too few to show marks. Open it as the camera saved it, with ${fewestPixels} or more along each side.`,
      );
    }
    const photograph = greyOf(bitmap);
    const preview = await previewOf(bitmap);
    return { photograph, preview, said, note: noteOf(bitmap, said, format, data) };
  } finally {
    bitmap.close();
  }
}

function tooLarge(columns: number, rows: number): RefusedFile {
  return new RefusedFile(
    `This picture has ${columns} × ${rows} pixels, ${millions(columns * rows)} million. Up to ${millions(mostPixels)} million can be opened: save it smaller, uncropped.`,
  );
}

const millions = (count: number) => String(Math.round(count / 1e6));

async function decoded(file: Blob, format: string): Promise<ImageBitmap> {
  try {
    return await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    if (['JPEG', 'PNG', 'WebP', 'GIF'].includes(format)) {
      throw new RefusedFile(
        `This ${format} file is damaged or was cut off: it cannot be decoded. Copy it from the camera once more.`,
      );
    }
    const which = format === 'TIFF' ? 'A raw or TIFF file' : `A ${format} picture`;
    throw new RefusedFile(`${which} cannot be decoded by this browser. Save it as JPEG, uncropped, and open that.`);
  }
}

function greyOf(bitmap: ImageBitmap): GreyPhotograph {
  const { width: columns, height: rows } = bitmap;
  const whole = { columns, rows, grey: new Uint8Array(columns * rows) };
  const canvas = new OffscreenCanvas(Math.min(tile, columns), Math.min(tile, rows));
  const context = canvas.getContext('2d', { willReadFrequently: true, alpha: false })!;
  for (let y = 0; y < rows; y += tile) {
    for (let x = 0; x < columns; x += tile) {
      const [width, height] = [Math.min(tile, columns - x), Math.min(tile, rows - y)];
      context.drawImage(bitmap, x, y, width, height, 0, 0, width, height);
      writeGrey(context.getImageData(0, 0, width, height).data, width, whole, { x, y });
    }
  }
  return whole;
}

function previewOf(bitmap: ImageBitmap): Promise<ImageBitmap> {
  const share = Math.min(1, previewSide / Math.max(bitmap.width, bitmap.height));
  return createImageBitmap(bitmap, {
    resizeWidth: Math.max(1, Math.round(bitmap.width * share)),
    resizeHeight: Math.max(1, Math.round(bitmap.height * share)),
    resizeQuality: 'medium',
  });
}

function noteOf({ width, height }: ImageBitmap, said: SaidByFile, format: string, data: ArrayBuffer): string {
  if (format === 'JPEG' && !isWholeJpeg(new Uint8Array(data)))
    return 'The file ends before the picture does: part of it is missing.';
  const across = Math.max(width, height);
  if (said.pixelsAcross === undefined || said.pixelsAcross === across) return '';
  return `The camera wrote ${said.pixelsAcross} pixels along the longer side, this file has ${across}. Made smaller, that does no harm; cropped, the numbers do not hold.`;
}

/** A rendered photograph as something that can be shown. */
export function previewOfGrey({ columns, rows, grey }: GreyPhotograph): Promise<ImageBitmap> {
  return createImageBitmap(new ImageData(rgbaOf(grey), columns, rows));
}

/** Grey as red, green, blue and full cover. */
export function rgbaOf(grey: Uint8Array): Uint8ClampedArray<ArrayBuffer> {
  const pixels = new Uint8ClampedArray(4 * grey.length);
  for (let at = 0; at < grey.length; at++) {
    pixels.fill(grey[at]!, 4 * at, 4 * at + 3);
    pixels[4 * at + 3] = 255;
  }
  return pixels;
}
