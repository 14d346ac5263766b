interface Tally {
  readonly killed: number;
  readonly survived: number;
  readonly at: string;
}

/** By topic, `gaussian`, or by part of one, `picture:3/10`. */
export type Results = Readonly<Record<string, Tally>>;

/** The topic of `picture:3/10`. */
export const nameOf = (one: string): string => one.split(':', 1)[0]!;

/** Which part `picture:3/10` is, and of how many; undefined for a whole topic. */
export function partOf(one: string): { readonly part: number; readonly of: number } | undefined {
  if (!one.includes(':')) return undefined;
  const [part, of] = one
    .slice(one.indexOf(':') + 1)
    .split('/')
    .map(Number);
  if (!Number.isInteger(part) || !Number.isInteger(of) || part! < 1 || part! > of!) {
    throw new Error(`“${one}” is no part of a topic: picture:3/10 is the third of ten.`);
  }
  return { part: part!, of: of! };
}

/** A new result in the place of old ones: the whole of a topic for its parts, parts of a number for those of another. */
export function withResult(results: Results, one: string, tally: Tally): Results {
  const fits = (other: string): boolean =>
    nameOf(other) !== nameOf(one) || (partOf(other) !== undefined && partOf(other)?.of === partOf(one)?.of);
  return { ...Object.fromEntries(Object.entries(results).filter(([other]) => fits(other))), [one]: tally };
}

/** A line for every topic, which says where it is of a part alone. */
export function scores(results: Results): readonly string[] {
  return [...new Set(Object.keys(results).map(nameOf))].map((topic) => {
    const ran = Object.entries(results).filter(([one]) => nameOf(one) === topic);
    const sum = (of: 'killed' | 'survived'): number => ran.reduce((total, [, tally]) => total + tally[of], 0);
    const changes = sum('killed') + sum('survived');
    const of = partOf(ran[0]![0])?.of;
    const sample = of === undefined || ran.length === of ? '' : `, ${ran.length} of ${of} parts of it drawn by chance`;
    const dates = [...new Set(ran.map(([, { at }]) => at))].sort().join(', ');
    return `${topic}: ${((100 * sum('killed')) / Math.max(1, changes)).toFixed(1)} % of ${changes} changes noticed${sample} (${dates})\n`;
  });
}
