import { printField } from './field.ts';
import { planOf } from './kinds.ts';
import type { Kit, NewPart } from './part.ts';

/** A way to tell parts apart: in words what it says of one, '' where that is not known. */
type Telling = (part: NewPart) => string;

/** What kind of thing each is, then field by field what is said of it. */
function tellings(parts: readonly NewPart[]): readonly Telling[] {
  const keys = new Set(parts.flatMap(({ kind }) => planOf(kind).fields.map(({ key }) => key)));
  return [
    ({ kind }) => planOf(kind).one.replace(/^an? /, ''),
    ...[...keys].map((key): Telling => (part) => {
      const field = planOf(part.kind).fields.find((one) => one.key === key);
      const value = part[key];
      if (!field || value === undefined) return '';
      const words = printField(field, value);
      return field.reads.by === 'choice' ? `${field.label.toLowerCase()}: ${words}` : words;
    }),
  ];
}

/** What is added to one name of several parts: as many facts as tell them apart, of those in which they differ. */
function additions(parts: readonly NewPart[]): readonly string[] {
  let added = parts.map(() => '');
  for (const tell of tellings(parts)) {
    if (new Set(added).size === parts.length) break;
    const said = parts.map(tell);
    const tells = added.some((one, at) => added.some((other, next) => one === other && said[at] !== said[next]));
    if (tells) added = added.map((words, at) => (said[at] === '' ? words : `${words}, ${said[at]}`));
  }
  return added;
}

const likeness = (name: string) => name.replace(/\s+/g, ' ').trim().toLowerCase();

/**
 * What parts are called where several stand beside each other: as their owner calls them, and of those with one name each with what tells it from the
 * others: `×2 converter, 40 mm`; those that are alike in everything are counted: `12 mm ring`, `12 mm ring, 2`.
 */
export function namesApart(parts: readonly NewPart[]): readonly string[] {
  const byName = new Map<string, NewPart[]>();
  for (const part of parts) {
    const alike = byName.get(likeness(part.name));
    if (alike) alike.push(part);
    else byName.set(likeness(part.name), [part]);
  }
  const added = new Map<NewPart, string>();
  for (const alike of byName.values()) {
    if (alike.length > 1) additions(alike).forEach((words, at) => added.set(alike[at]!, words));
  }
  const taken = new Set<string>();
  return parts.map((part) => {
    const name = `${part.name.trim()}${added.get(part) ?? ''}`;
    let told = name;
    for (let number = 2; taken.has(likeness(told)); number++) told = `${name}, ${number}`;
    taken.add(likeness(told));
    return told;
  });
}

const known = new WeakMap<Kit, ReadonlyMap<string, string>>();

/** What a part of a kit is called among the others: its name where no other has it. */
export function nameInKit(kit: Kit, { id, name }: { readonly id: string; readonly name: string }): string {
  let names = known.get(kit);
  if (!names) {
    const told = namesApart(kit.parts);
    names = new Map(kit.parts.map((part, at) => [part.id, told[at]!]));
    known.set(kit, names);
  }
  return names.get(id) ?? name;
}
