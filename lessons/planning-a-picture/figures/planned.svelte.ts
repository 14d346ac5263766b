import { nameOf, type LensSlug } from '#site/state/crate.ts';
import { bench } from '../bench.svelte.ts';
import { askedOf, ofAsked, oneLens } from './asked-of-chain.ts';
import { chains } from './chains.svelte.ts';
import { decisionsOf, framesSaid, nothingSharp } from './decisions.ts';
import type { Question } from './questions.ts';
import type { Planned as Subject } from './subjects.ts';

/** What is drawn of the plan as the bench has it. */
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

  /** What lights it, the fullest first. */
  readonly light = $derived(
    {
      ambient: [`daylight, ${bench.words('ambient.exposure-time')}`, 'daylight'],
      flash: [`flash at ${bench.words('needed.flash-power')}`, 'flash'],
      'higher-iso': ['neither: higher ISO', 'neither'],
    }[this.decided.light],
  );

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
}

export const plan = new Plan();
