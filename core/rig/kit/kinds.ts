import type { KitRow } from './kit.ts';

/** Rows alike in everything but their name: however many there are, it makes no difference which is taken. */
export interface Kind<Row extends KitRow = KitRow> {
  /** The first by name; it stands for all. */
  readonly row: Row;
  /** Names of all of them, in order. */
  readonly ids: readonly string[];
}

/** Everything about a row but its name, as a text that is the same for the same things. */
export function likeness({ id: _, ...rest }: KitRow): string {
  return JSON.stringify(sorted(rest));
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).filter(([, inner]) => inner !== undefined);
  return entries.sort(([one], [other]) => (one < other ? -1 : 1)).map(([key, inner]) => [key, sorted(inner)]);
}

/** The kinds of a kit, in the order of their names whatever that of the rows. */
export function kindsOf(kit: readonly KitRow[]): readonly Kind[] {
  const byLikeness = new Map<string, KitRow[]>();
  for (const row of [...kit].sort((one, other) => (one.id < other.id ? -1 : 1))) {
    const key = likeness(row);
    const alike = byLikeness.get(key);
    if (alike) alike.push(row);
    else byLikeness.set(key, [row]);
  }
  return [...byLikeness.values()].map((rows) => ({ row: rows[0] as KitRow, ids: rows.map(({ id }) => id) }));
}

/** Those of one part. */
export function ofPart<Part extends KitRow['part']>(
  kinds: readonly Kind[],
  part: Part,
): readonly Kind<Extract<KitRow, { part: Part }>>[] {
  return kinds.filter(({ row }) => row.part === part) as unknown as readonly Kind<Extract<KitRow, { part: Part }>>[];
}

/** Every way to share kinds out over *places*, leaving any number of each in the bag: for each way, the rows in each place. */
export function handfuls<Row extends KitRow>(
  kinds: readonly Kind<Row>[],
  places: 1 | 2,
): readonly (readonly (readonly Row[])[])[] {
  let ways: Row[][][] = [Array.from({ length: places }, () => [])];
  for (const { row, ids } of kinds) {
    const more: Row[][][] = [];
    for (const way of ways) {
      for (let first = 0; first <= ids.length; first++) {
        for (let second = 0; second <= (places === 2 ? ids.length - first : 0); second++) {
          more.push(way.map((hand, place) => [...hand, ...Array<Row>(place === 0 ? first : second).fill(row)]));
        }
      }
    }
    ways = more;
  }
  return ways;
}
