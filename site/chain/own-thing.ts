import { OutOfRange } from '#core/quantity/errors.ts';
import { possibleLenses } from '#core/rig/assumed/possible-lenses.ts';
import { knownLens, registerOf } from '#site/kit/known-lens.ts';
import { numberIn, type Kit, type KitPart, type NewPart } from '#site/kit/part.ts';
import { namesApart, nameInKit } from '#site/kit/told-apart.ts';
import { refusalInWords } from '#site/state/answer.ts';
import { isSameThing } from './chain-in-text.ts';
import { isChainKind, type ChainKind, type Thing } from './thing.ts';

const made = new WeakMap<NewPart, { readonly register: number | undefined; readonly thing: Thing }>();

/** A part of a reader's kit as a thing of a chain; undefined for what stands beside one. The same part is the same thing. */
export function ownThing(part: KitPart, kit: Kit): Thing | undefined {
  if (!isChainKind(part.kind)) return undefined;
  const register = part.kind === 'lens' ? registerOf(part, kit) : undefined;
  const name = nameInKit(kit, part);
  const known = made.get(part);
  if (known && known.register === register && known.thing.name === name) return known.thing;
  const thing = { ...thingOf(part, `my-${part.id}`, register), name };
  made.set(part, { register, thing });
  return thing;
}

/** A part as a thing of a chain. Of a lens that does not say its own register it is that of its mount. */
export function thingOf(part: NewPart, slug: string, registerOfMount?: number): Thing {
  const register = numberIn(part, 'register-distance') ?? registerOfMount;
  const thing = { slug, kind: part.kind as ChainKind, name: part.name, part, isOwn: true };
  if (part.kind !== 'lens') return thing;
  if (register === undefined) {
    return { ...thing, fault: 'its register is not known: no camera of the kit has its mount' };
  }
  // An address has to say the register, for where it is opened there is no kit to have it from.
  const said = { ...part, 'register-distance': register };
  try {
    return { ...thing, part: said, lenses: possibleLenses(knownLens(part, register)) };
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    return { ...thing, part: said, fault: refusalInWords(error) };
  }
}

/** Things of a reader's own that stand side by side without their kit, each with a name that no other has; what is said twice in the same words is one thing twice. */
export function thingsApart(things: readonly Thing[]): readonly Thing[] {
  const first = things.map((thing) => things.find((one) => isSameThing(one, thing))!);
  const own = [...new Set(first)].filter(({ isOwn }) => isOwn);
  const names = namesApart(own.map(({ part }) => part));
  const named = new Map(own.map((thing, at) => [thing, { ...thing, name: names[at]! }]));
  return first.map((thing) => named.get(thing) ?? thing);
}
