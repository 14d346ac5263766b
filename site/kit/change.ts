import { emptyKit, type Kit, type KitPart, type NewPart } from './part.ts';

/** A kit of these parts, in this order. */
export const kitOf = (...parts: readonly NewPart[]): Kit => parts.reduce(withPart, emptyKit);

/** The kit with *part* at its end, under an id of its own. */
export function withPart(kit: Kit, part: NewPart): Kit {
  const { id: _, ...rest } = part as KitPart;
  return { ...kit, parts: [...kit.parts, { ...rest, id: freeId(kit, part.kind) } as KitPart] };
}

/** The kit with *part* in the place of the one of the same id; at its end where another tab has removed that. */
export function withChanged(kit: Kit, part: KitPart): Kit {
  if (!kit.parts.some(({ id }) => id === part.id)) return withPart(kit, part);
  return { ...kit, parts: kit.parts.map((one) => (one.id === part.id ? part : one)) };
}

/** The kit without the part of this id. */
export function without(kit: Kit, id: string): Kit {
  return { ...kit, parts: kit.parts.filter((part) => part.id !== id) };
}

/** The kit with a part that was removed back where it was, as far as that place is still there. */
export function withBack(kit: Kit, part: KitPart, place: number): Kit {
  if (kit.parts.some(({ id }) => id === part.id)) return withPart(kit, part);
  return { ...kit, parts: kit.parts.toSpliced(place, 0, part) };
}

/** The kit with what *other* has more of: parts alike in all but their id are the same part, as often as both have them. */
export function merged(kit: Kit, other: Kit): Kit {
  const had = kit.parts.map(likeness);
  let now = kit;
  for (const part of other.parts) {
    const place = had.indexOf(likeness(part));
    if (place < 0) now = withPart(now, part);
    else had.splice(place, 1);
  }
  return now;
}

/** Everything about a part but its id, as a text that is the same for the same things. */
function likeness({ id: _, ...rest }: KitPart): string {
  return JSON.stringify(Object.entries(rest).sort(([one], [other]) => (one < other ? -1 : 1)));
}

/** The first id of this kind that no part has. */
function freeId({ parts }: Kit, kind: string): string {
  const taken = new Set(parts.map(({ id }) => id));
  let number = 1;
  while (taken.has(`${kind}-${number}`)) number++;
  return `${kind}-${number}`;
}
