import type { KitRow } from '#core/rig/kit/kit.ts';
import type { Thing } from '#site/chain/thing.ts';

/** One camera of the reader's kit with all that can stand before it, as a search takes it. */
export interface OwnCamera {
  readonly sensorWidth: number;
  readonly registerDistance: number;
  readonly mount: string;
  readonly thing: Thing;
  readonly rows: readonly KitRow[];
}

/** The reader's kit as chains are searched in it. */
export interface OwnParts {
  /** Another for every change of the kit: what was found in it before is nothing to go by. */
  readonly edition: number;
  /** One at least. */
  readonly cameras: readonly OwnCamera[];
  /** What a part is called in a chain, by the id of its row; nothing for a ring that only holds the next thing. */
  readonly names: Readonly<Record<string, string>>;
  /** What a part is, by the id of its row. */
  readonly things: Readonly<Record<string, Thing>>;
}

/** Where the kit's own files leave what chains are searched in; empty where no kit is kept or it makes no chain. */
class OwnPartsHere {
  /** What offers them to a bench beside its *own* other parts, where a page searches chains: the page says from where that is fetched. */
  load: (() => Promise<{ readonly searchIn: (bench: never, own: never, kit: never) => void }>) | undefined;
  /** The query that the page was opened with: it may name a kit that was not here yet. */
  opened = '';
  found: OwnParts | undefined = $state.raw();
}

export const ownParts = new OwnPartsHere();
