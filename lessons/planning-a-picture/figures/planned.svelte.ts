import { nameOf, type LensSlug } from '#site/state/crate.ts';
import { ownRings } from '#site/state/own-rings.svelte.ts';
import { bench } from '../bench.svelte.ts';
import { askedOf, ofAsked, oneLens } from './asked-of-chain.ts';
import { chains } from './chains.svelte.ts';
import { decisionsOf, framesSaid, nothingSharp } from './decisions.ts';
import type { Ranged } from './planned-chain.ts';
import type { Question } from './questions.ts';
import { extensionInWords, type Planned as Subject } from './subjects.ts';

type Texts = Readonly<Partial<Record<Ranged, string>>>;

/** What sheets and card say of the plan as the bench has it. */
class Plan {
  readonly subject = $derived(bench.chosen('subject') as Subject);
  /** The last question that is answered. */
  readonly question = $derived(Number(bench.chosen('question')) as Question);

  /** Where the lens has no such focus no time is short enough. */
  readonly slowest = $derived(bench.number('slowest.exposure-time', 1e-12));
  readonly decided = $derived.by(() => {
    const magnification = bench.number('chain.magnification', undefined);
    if (magnification === undefined) return nothingSharp;
    return decisionsOf({
      ...bench.named('working-distance', 'flight-distance', 'subject-depth', 'effective-f-number'),
      ...bench.named('circle-of-confusion', 'wavelength', 'frame-count', 'in-time.frame-count'),
      ...bench.named('ambient.exposure-time', 'needed.flash-power'),
      magnification,
      slowestExposureTime: this.slowest,
    });
  });
  readonly frames = $derived(framesSaid(this.decided, bench.words('frame-count'), bench.words('in-time.frame-count')));

  readonly slug = $derived(bench.chosen('chain')!);
  readonly isOneLens = $derived(this.slug === oneLens);
  readonly asked = $derived(askedOf(bench.named(...ofAsked)));
  /** The chain as it is set, where it is not one lens; none while it is on its way. */
  readonly set = $derived(this.isOneLens ? undefined : chains.atHand?.plannedChain(this.slug, this.asked));

  readonly lens = $derived(bench.chosen('lens') as LensSlug | undefined);
  /** Own rings go with an own lens, the crate's with the crate's. */
  readonly ownLens = $derived(this.lens === undefined ? bench.chosenOrOwn('lens') : undefined);
  readonly lensName = $derived(
    this.lens !== undefined
      ? nameOf(this.lens)
      : this.ownLens === undefined
        ? `${bench.words('focal-length')} lens`
        : bench.choices['lens']!.options[this.ownLens]!.label,
  );
  readonly #extension = $derived(bench.number('extension', undefined));
  readonly #spacers = $derived(extensionInWords(this.#extension, this.ownLens === undefined ? [] : ownRings.lengths));
  /** The chain in words. */
  readonly chainSaid = $derived(
    this.isOneLens
      ? `${this.lensName}: ${this.#spacers}${this.#extension ? `, needs ${bench.words('extension')}` : ''}`
      : (this.set?.name ?? bench.words('chain.magnification')),
  );
  /** The chain gives the size that is wanted. */
  readonly isReached = $derived(
    this.isOneLens ? !this.#spacers.startsWith('longer') : typeof bench.answers.magnification === 'number',
  );

  /** Where something of a lens is assumed, between what room and light lie, and why. */
  readonly ranges = $derived.by((): { readonly texts: Texts; readonly because: readonly string[] } => {
    const none = { texts: {}, because: [] };
    if (!chains.atHand) return none;
    if (!this.isOneLens) return chains.atHand.rangesOf(this.slug, this.asked);
    const lens = this.ownLens === undefined ? undefined : bench.choices['lens']!.options[this.ownLens];
    const may = lens?.between?.(bench.inputs);
    if (!may) return none;
    const all = (name: Ranged) => may.map((fill) => bench.would(name, fill, undefined));
    return {
      texts: chains.atHand.rangeTexts({
        'working-distance': all('working-distance'),
        'effective-f-number': all('effective-f-number'),
      }),
      // The page says it below its readings.
      because: [],
    };
  });

  /** An answer as the card has it: its range where it has one. */
  say(name: Parameters<typeof bench.words>[0]): string {
    return this.ranges.texts[name as Ranged] ?? bench.words(name);
  }
}

export const plan = new Plan();
