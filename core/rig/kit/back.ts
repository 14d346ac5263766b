import { handfuls, ofPart, type Kind } from './kinds.ts';
import type { KitConverter, KitRing } from './kit.ts';

/** What stands between camera and lens: rings, and perhaps a converter among them. Order within a place makes no difference. */
export interface Back {
  readonly converter: KitConverter | null;
  /** Between camera and converter; none without a converter. */
  readonly behind: readonly KitRing[];
  /** Between converter, or camera, and lens. */
  readonly before: readonly KitRing[];
  readonly price: number;
  /** Which of `BackLengths` it has. */
  readonly lengths: number;
}

/** All that the optics want to know of a back: many have the same. */
export interface BackLengths {
  readonly converter: KitConverter | null;
  readonly behind: number;
  readonly before: number;
  /** Whether contacts reach through it. */
  readonly contacts: boolean;
}

export interface Backs {
  readonly all: readonly Back[];
  readonly lengths: readonly BackLengths[];
}

/** Lengths that differ by less, mm, are the same. */
const finest = 1e-6;

/** Every back for cameras of *mount*, each once, with the lengths that they share. */
export function backsOf(kinds: readonly Kind[], mount: string): Backs {
  const rings = ofPart(kinds, 'ring').filter(({ row }) => row.mount === mount);
  const converters = ofPart(kinds, 'converter').filter(({ row }) => row.mount === mount);
  const all: Back[] = [];
  const lengths: BackLengths[] = [];
  const known = new Map<string, number>();
  const add = (converter: KitConverter | null, behind: readonly KitRing[], before: readonly KitRing[]) => {
    const used = [...behind, ...before];
    const found = {
      converter,
      behind: total(behind),
      before: total(before),
      contacts: converter?.coupled !== false && used.every(({ coupled }) => coupled !== false),
    };
    const key = [
      converter?.id ?? '',
      Math.round(found.behind / finest),
      Math.round(found.before / finest),
      found.contacts,
    ];
    const text = JSON.stringify(key);
    let index = known.get(text);
    if (index === undefined) {
      index = lengths.push(found) - 1;
      known.set(text, index);
    }
    const price = used.reduce((sum, ring) => sum + ring.price, converter?.price ?? 0);
    all.push({ converter, behind, before, price, lengths: index });
  };
  for (const [before = []] of handfuls(rings, 1)) add(null, [], before);
  if (converters.length > 0) {
    const shared = handfuls(rings, 2);
    for (const { row } of converters) for (const [behind = [], before = []] of shared) add(row, behind, before);
  }
  return { all, lengths };
}

function total(rings: readonly KitRing[]): number {
  return rings.reduce((sum, { extension }) => sum + extension, 0);
}
