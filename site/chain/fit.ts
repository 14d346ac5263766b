import { wordsIn } from '#site/kit/part.ts';
import type { Chain, Link } from './chain.ts';
import { otherRegister, type OtherRegister } from './registers.ts';

/** What a part offers to the next one in front of it. */
type End =
  | { readonly by: 'mount'; readonly name: string }
  /** The thread in front of a lens, for filters. */
  | { readonly by: 'filter thread' }
  /** The end of a tube lens: an infinity objective goes there. */
  | { readonly by: 'tube' }
  /** The thread of a reversing or coupling ring, which goes into the front of a lens. */
  | { readonly by: 'ring’s thread' }
  /** The back of a lens that is turned round. */
  | { readonly by: 'nothing' };

/** Two parts that do not hold on to each other as they are: which, and what is to be done. */
export interface Misfit {
  readonly at: number;
  readonly words: string;
  /** What helps, and at which place. */
  readonly adapter?: OtherRegister['adapter'];
}

/**
 * Where a chain lacks something that holds one part on another: a lens turned round without a reversing ring, two mounts or registers that differ.
 *
 * The optics are as they would be; who builds it needs one thing more, and that takes up length.
 */
export function misfitsOf(chain: Chain): readonly Misfit[] {
  const misfits: Misfit[] = [];
  const register = otherRegister(chain);
  let end: End = { by: 'nothing' };
  let before = '';
  chain.forEach((link, at) => {
    const words = at === 0 ? '' : misfit(link, end, before);
    // Of registers that differ the words say more than that the mounts do.
    const found = at === register?.at ? register : { at, words: words ?? '' };
    if (found.words !== '') misfits.push(found);
    end = endOf(link, end);
    before = link.thing.name;
  });
  return misfits;
}

function endOf({ thing, turned }: Link, end: End): End {
  switch (thing.kind) {
    case 'camera':
    case 'ring':
    case 'bellows':
    case 'converter':
      return { by: 'mount', name: wordsIn(thing.part, 'mount') || (end.by === 'mount' ? end.name : '') };
    case 'reversing-ring':
    case 'coupling-ring':
      return { by: 'ring’s thread' };
    case 'lens':
      return { by: turned ? 'nothing' : 'filter thread' };
    case 'close-up-lens':
      return { by: 'filter thread' };
    case 'tube-lens':
      return { by: 'tube' };
    case 'objective':
    case 'finite-objective':
      return { by: 'nothing' };
  }
}

function misfit({ thing, turned }: Link, end: End, before: string): string | undefined {
  const { kind, name, part } = thing;
  if (kind === 'objective') {
    if (end.by === 'filter thread' || end.by === 'tube') return undefined;
    const needs =
      end.by === 'mount'
        ? 'made for parallel light, it needs a tube lens behind it, its focal length before the sensor.'
        : 'it is made to have a lens behind it.';
    return `${name} goes on an adapter in the thread in front of a lens, and ${before} has none there: ${needs}`;
  }
  if (kind === 'finite-objective' && (end.by === 'filter thread' || end.by === 'tube')) {
    return `${name} forms its picture by itself, at the end of a tube: it goes on rings or bellows, not on ${before}.`;
  }
  if (kind === 'close-up-lens' || kind === 'coupling-ring') {
    if (end.by === 'filter thread') return undefined;
    return `${name} goes into the thread in front of a lens, and ${before} has none there.`;
  }
  if (kind === 'lens' && turned) {
    if (end.by === 'ring’s thread') return undefined;
    const needs = end.by === 'filter thread' ? 'coupling ring' : 'reversing ring';
    return `${name}, turned round, needs a ${needs} behind it, which takes up length, too.`;
  }
  if (end.by !== 'mount') {
    return `${name} goes on a mount, and ${before} has ${end.by === 'nothing' || end.by === 'tube' ? 'none in front' : 'a thread in front'}.`;
  }
  const own = wordsIn(part, 'mount');
  return own !== '' && end.name !== '' && own !== end.name
    ? `${name} has another mount than ${before}: an adapter has to go between, which takes up length, too.`
    : undefined;
}
