import { load } from 'exifreader';
import type { SaidByFile } from './messages.ts';

/** What is read of a file before anything is decoded. */
export interface FileHead {
  /** As its format is called; undefined for what is no picture. */
  readonly format: string | undefined;
  /** As they are stored, where the format says so. */
  readonly columns?: number;
  readonly rows?: number;
  readonly said: SaidByFile;
}

/** What a camera counts pixels of the focal plane by. */
const millimetresOfUnit: Readonly<Record<number, number>> = { 2: 25.4, 3: 10, 4: 1 };

/** Reads format, size and what the camera wrote. No file makes this throw: what is no picture has no format. */
export function headOf(data: ArrayBuffer): FileHead {
  let tags: ReturnType<typeof loadAll>;
  try {
    tags = loadAll(data);
  } catch {
    return { format: undefined, said: {} };
  }
  const { file = {}, png, gif, riff, exif = {} } = tags as unknown as Record<string, Record<string, Tag> | undefined>;
  const number = (...found: readonly (Tag | undefined)[]) => found.map(numberOf).find((value) => value !== undefined);
  const columns = number(file?.['Image Width'], png?.['Image Width'], gif?.['Image Width'], riff?.['ImageWidth']);
  const rows = number(file?.['Image Height'], png?.['Image Height'], gif?.['Image Height'], riff?.['ImageHeight']);
  return {
    format: file?.['FileType']?.description as string | undefined,
    ...(columns !== undefined && { columns }),
    ...(rows !== undefined && { rows }),
    said: saidBy(exif ?? {}),
  };
}

interface Tag {
  readonly value?: unknown;
  readonly description?: string;
}

const loadAll = (data: ArrayBuffer) => load(data, { expanded: true });

function saidBy(exif: Record<string, Tag>): SaidByFile {
  const within = (value: number | undefined, least: number, most: number) =>
    value !== undefined && value >= least && value <= most ? value : undefined;
  const [x, y] = [numberOf(exif['PixelXDimension']), numberOf(exif['PixelYDimension'])];
  const pixelsAcross = within(x === undefined ? undefined : Math.max(x, y ?? 0), 16, 1e6);
  const unit = millimetresOfUnit[numberOf(exif['FocalPlaneResolutionUnit']) ?? 2];
  const density = within(numberOf(exif['FocalPlaneXResolution']), 1, 1e6);
  const sensorWidth = pixelsAcross && density && unit ? within((pixelsAcross / density) * unit, 3, 100) : undefined;
  const focalLength = within(numberOf(exif['FocalLength']), 1, 2000);
  const fNumber = within(numberOf(exif['FNumber']), 0.5, 200);
  return {
    ...(focalLength !== undefined && { focalLength }),
    ...(fNumber !== undefined && { fNumber }),
    ...(sensorWidth !== undefined && { sensorWidth: Math.round(sensorWidth * 100) / 100 }),
    ...(pixelsAcross !== undefined && { pixelsAcross }),
  };
}

/** A tag's number: plain, the only one of a list, or numerator over denominator. */
function numberOf(tag: Tag | undefined): number | undefined {
  let value = tag?.value;
  if (Array.isArray(value)) {
    const list = value as readonly unknown[];
    value = list.length === 2 ? Number(list[0]) / Number(list[1]) : list[0];
  }
  const number = Number(value);
  return value !== undefined && value !== '' && Number.isFinite(number) ? number : undefined;
}
