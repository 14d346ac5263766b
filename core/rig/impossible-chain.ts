import type { Part } from './part.ts';

/** A chain that cannot be put together, or forms no picture. Says which part is at fault and why. */
export class ImpossibleChain extends Error {
  override readonly name = 'ImpossibleChain';
  /** Its place in the chain, the camera being 0. */
  readonly index: number;
  readonly reason: string;

  constructor(index: number, kind: string, reason: string) {
    super(`part ${index}, ${kind}: ${reason}`);
    this.index = index;
    this.reason = reason;
  }
}

type Role = 'camera' | 'spacer' | 'converter' | 'lens' | 'close-up lens' | 'tube lens' | 'objective';

const roles: Record<Part['part'], Role> = {
  camera: 'camera',
  ring: 'spacer',
  bellows: 'spacer',
  converter: 'converter',
  'converter by points': 'converter',
  lens: 'lens',
  'close-up lens': 'close-up lens',
  'tube lens': 'tube lens',
  objective: 'objective',
};

/** What of the chain has been mounted so far, as far as it decides what may follow. */
export interface Mounted {
  lens: 'none' | 'right way round' | 'reversed' | 'two';
  tubeLens: boolean;
  closeUpLens: boolean;
  objective: boolean;
}

/** Before the first part. */
export function nothingMounted(): Mounted {
  return { lens: 'none', tubeLens: false, closeUpLens: false, objective: false };
}

/**
 * Throws {@link ImpossibleChain} where a part cannot follow those already mounted; else notes it as mounted.
 *
 * The rules are mechanical: see [README](README.md#what-cannot-be-built).
 */
export function mount(mounted: Mounted, part: Part, index: number): void {
  const reason = index === 0 ? reasonAgainstFirst(part) : reasonAgainst(mounted, part);
  if (reason !== undefined) throw new ImpossibleChain(index, part.part, reason);
  const role = roles[part.part];
  if (part.part === 'lens')
    mounted.lens = mounted.lens !== 'none' ? 'two' : part.reversed ? 'reversed' : 'right way round';
  else if (role === 'close-up lens') mounted.closeUpLens = true;
  else if (role === 'tube lens') mounted.tubeLens = true;
  else if (role === 'objective') mounted.objective = true;
}

function reasonAgainstFirst(part: Part): string | undefined {
  return part.part === 'camera' ? undefined : 'a chain starts with its camera';
}

function reasonAgainst({ lens, tubeLens, closeUpLens, objective }: Mounted, part: Part): string | undefined {
  const glass = lens !== 'none' || tubeLens || closeUpLens || objective;
  switch (roles[part.part]) {
    case 'camera':
      return 'a chain has one camera';
    case 'spacer':
      return part.part === 'bellows' && glass ? 'bellows stand between camera and lens' : undefined;
    case 'converter':
      return glass ? 'a converter stands behind the lens, not in front of it' : undefined;
    case 'lens':
      return reasonAgainstLens({ lens, tubeLens, closeUpLens, objective }, part.part === 'lens' && !!part.reversed);
    case 'tube lens':
      return glass ? 'a tube lens is the first glass before the camera' : undefined;
    case 'close-up lens':
      return objective ? 'nothing goes in front of a microscope objective' : undefined;
    case 'objective':
      if (objective) return 'a chain has one objective';
      if (lens === 'reversed' || lens === 'two') return 'an objective needs the front of a lens the right way round';
      return closeUpLens ? 'an objective stands on tube, tube lens or camera lens, not on a close-up lens' : undefined;
  }
}

function reasonAgainstLens({ lens, tubeLens, objective, closeUpLens }: Mounted, reversed: boolean): string | undefined {
  if (objective) return 'nothing goes in front of a microscope objective';
  if (tubeLens) return 'before a tube lens comes an objective';
  if (lens === 'two') return 'a third lens has nowhere to go';
  if (lens === 'reversed') return 'a lens that is turned round has no thread in front for another';
  if (lens === 'right way round' && !reversed)
    return 'a second lens goes on the first front to front, that is reversed';
  if (lens === 'none' && closeUpLens) return 'a close-up lens stands in front of the lens, not behind it';
  return undefined;
}
