import { ownRings } from '#site/state/own-rings.svelte.ts';
import { bench } from '../bench.svelte.ts';
import { chains } from './chains.ts';
import { extensionInWords } from './extension-in-words.ts';
import type { SizeGiven } from './plan.ts';
import type { Ranged } from './planned-chain.ts';
import { plan } from './planned.svelte.ts';
import { questions } from './questions.ts';
import { ranged } from './ranged.svelte.ts';

type Texts = Readonly<Partial<Record<Ranged, string>>>;

/** What is said of the plan in words. */
class Said {
  readonly #extension = $derived(bench.number('extension', undefined));
  readonly #spacers = $derived(extensionInWords(this.#extension, plan.ownLens === undefined ? [] : ownRings.lengths));
  /** The chain. */
  readonly chain = $derived(
    plan.isOneLens
      ? `${plan.lensName}: ${this.#spacers}${this.#extension ? `, needs ${bench.words('extension')}` : ''}`
      : plan.set
        ? plan.set.name || 'no lens'
        : bench.words('chain.magnification'),
  );
  /** Why there is no chain, where there is none. */
  get noChain(): 'impossible' | 'coming' | undefined {
    if (plan.isOneLens || plan.set?.positions) return undefined;
    return plan.set ? 'impossible' : 'coming';
  }
  /** Whether the chain gives the size that is wanted. */
  get gives(): SizeGiven {
    if (plan.isOneLens) return this.#spacers.startsWith('longer') ? 'less' : 'asked';
    if (typeof bench.answers.magnification === 'number') return 'asked';
    const given = bench.number('chain.magnification', 0);
    if (given < bench.number('magnification')) return 'less';
    return given * bench.inputs['subject-width'] > bench.inputs['sensor-width'] ? 'beyond' : 'more';
  }

  /** Where something of a lens is assumed, between what room and light lie, and why. */
  readonly ranges = $derived.by((): { readonly texts: Texts; readonly because: readonly string[] } => {
    const none = { texts: {}, because: [] };
    if (!chains.here) return none;
    if (!plan.isOneLens) return chains.here.rangesOf(plan.slug, plan.asked);
    const lens = plan.ownLens === undefined ? undefined : bench.choices['lens']!.options[plan.ownLens];
    const may = lens?.between?.(bench.inputs);
    if (!may) return none;
    const all = (name: Ranged) => may.map((fill) => bench.would(name, fill, undefined));
    return {
      texts: chains.here.rangeTexts({
        'working-distance': all('working-distance'),
        'effective-f-number': all('effective-f-number'),
      }),
      // The page says it below its readings.
      because: [],
    };
  });
}

export const said = new Said();
ranged.of = (name) => said.ranges.texts[name];

/** The plan for listeners. */
export function planInWords(): string {
  const words = (name: Parameters<typeof bench.words>[0]) => bench.words(name);
  return (
    `Answered up to question ${plan.question}, ${questions[plan.question - 1]!.title}. The subject ${plan.givenFill === undefined ? 'is to take' : 'takes'} ${plan.fillSaid.replace(' asked', '')} of the picture’s width: ${words('magnification')}. ` +
    `Chain: ${said.chain}. From the rim of the lens to the subject: ${words('working-distance')}, wanted ${words('flight-distance')}. ` +
    `It is ${words('subject-depth')} deep, one frame by its rays ${words('depth-of-field')}: ${plan.frames}. ` +
    `${plan.light[0]}. The light is ${words('flash-distance')} from the subject and looks ${words('source-angle')} wide.`
  );
}

/** What a reader has to know of the chain that is planned: what of a link could not be used, and what is assumed of its lenses. */
export const notesNow = (): readonly string[] => [...(plan.set?.notices ?? []), ...said.ranges.because];

/** Why nothing can be put together, in one sentence: of several reasons the first. */
export const brokenNow = (): string | undefined =>
  said.noChain === 'impossible' ? `${plan.set!.notices[0]!.split('. ')[0]!.replace(/\.$/, '')}.` : undefined;

/** Why no chain is drawn. */
export const noChainNow = (): string =>
  chains.isMissing
    ? 'The network did not give the chain.'
    : (plan.set?.notices.at(-1) ?? bench.words('chain.magnification'));
