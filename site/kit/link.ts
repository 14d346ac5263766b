import { packed, unpacked } from '#site/state/packed.ts';
import { kindNames, planOf } from './kinds.ts';
import type { Kit, KitPart, KitValue } from './part.ts';
import { largestFile } from './file.ts';
import { readKit, type KitReading } from './schema.ts';
import { currentVersion } from './upgrade.ts';

/** What stands in an address before a kit; behind the #, which no server is told. */
const mark = '#kit=';

/** The form in which a link writes a kit. */
const form = 1;

/**
 * A kit as the part of an address behind its #, packed: values in the order of the table of kinds, deflated, in letters that an address may have.
 *
 * @returns as short as it comes; 40 parts of usual length fit a QR code, see `qr.ts`
 */
export async function hashOf(kit: Kit): Promise<string> {
  const rows = kit.parts.map(rowOf);
  return mark + (await packed(JSON.stringify([form, ...rows])));
}

/** Reads a kit from the part of an address behind its #; undefined where that speaks of none. No address makes this throw. */
export async function readHash(hash: string): Promise<KitReading | undefined> {
  if (!hash.startsWith(mark)) return undefined;
  try {
    const data: unknown = JSON.parse(await unpacked(hash.slice(mark.length), largestFile));
    if (!Array.isArray(data)) return broken;
    if (data[0] !== form) return { kind: 'refused', message: 'This link was made by another edition of the workbook.' };
    return readKit({ kit: 'ring-and-ruler', version: currentVersion, parts: data.slice(1).map(partOfRow) });
  } catch {
    return broken;
  }
}

const broken: KitReading = {
  kind: 'refused',
  message:
    'This link to a kit is damaged: part of it is missing, or it is no link to a kit. Copy all of it, or ask for the file.',
};

type Cell = number | string | null | readonly [number, number];

function rowOf(part: KitPart): readonly Cell[] {
  const cells = planOf(part.kind).fields.map(({ key, reads }): Cell => {
    const value = part[key];
    if (value === undefined) return null;
    if (reads.by === 'choice') return Object.keys(reads.options).indexOf(String(value));
    return typeof value === 'object' ? [value.value, value.error] : value;
  });
  while (cells.at(-1) === null) cells.pop();
  return [kindNames.indexOf(part.kind), part.name, ...cells];
}

/** The part that a row says, as data to be checked. */
function partOfRow(row: unknown, index: number): unknown {
  if (!Array.isArray(row)) return row;
  const [place, name, ...cells] = row as readonly unknown[];
  const kind = kindNames[place as number];
  if (kind === undefined) return { kind: place };
  const { fields } = planOf(kind);
  const said = cells.flatMap((cell, at): [string, unknown][] => {
    const field = fields[at];
    if (cell === null) return [];
    if (!field) return [[`field ${at + 1}`, cell]];
    const { reads } = field;
    return [[field.key, reads.by === 'choice' ? Object.keys(reads.options)[cell as number] : valueOf(cell)]];
  });
  return { id: `${kind}-${index + 1}`, kind, name, ...Object.fromEntries(said) };
}

const valueOf = (cell: unknown) => (Array.isArray(cell) ? ({ value: cell[0], error: cell[1] } as KitValue) : cell);
