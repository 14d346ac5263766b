import { printQuantity } from '#core/quantity/print.ts';
import { nameOf, type LensSlug } from '#site/state/crate.ts';
import { bench } from '../bench.svelte.ts';
import { askedOf, ofAsked, oneLens } from './asked-of-chain.ts';
import { chains } from './chains.ts';
import { decisionsOf, framesSaid, nothingSharp } from './decisions.ts';
import type { Question } from './questions.ts';
import type { Planned as Subject } from './subjects.ts';

/** What is drawn of the plan as the bench has it. */
class Plan {
  get subject(): Subject {
    return bench.chosen('subject') as Subject;
  }
  /** The last question that is answered. */
  get question(): Question {
    return Number(bench.chosen('question')) as Question;
  }

  /** Where the lens has no such focus no time is short enough. */
  get slowest(): number {
    return bench.number('slowest.exposure-time', 1e-12);
  }
  readonly decided = $derived.by(() => {
    const magnification = bench.number('chain.magnification', undefined);
    if (magnification === undefined) return nothingSharp;
    return decisionsOf({
      ...bench.named('working-distance', 'flight-distance', 'subject-depth', 'effective-f-number'),
      ...bench.named('circle-of-confusion', 'wavelength', 'frame-count', 'in-time.frame-count'),
      ...bench.named('ambient.exposure-time', 'needed.flash-power', 'flash-distance', 'source-size'),
      hasHole: bench.chosen('source') === 'bowl',
      magnification,
      slowestExposureTime: this.slowest,
    });
  });
  get frames(): string {
    return framesSaid(this.decided, bench.words('frame-count'), bench.words('in-time.frame-count'));
  }
  /** The share of the picture's width that the subject takes with this chain. */
  get givenFill(): number | undefined {
    const given = bench.number('chain.magnification', undefined);
    // As asked for, but for rounding.
    if (given && typeof bench.answers.magnification === 'number') return bench.inputs['frame-fill'];
    return given && (given * bench.inputs['subject-width']) / bench.inputs['sensor-width'];
  }
  get fillSaid(): string {
    const { givenFill } = this;
    return givenFill === undefined ? `${bench.words('frame-fill')} asked` : printQuantity('frame-fill', givenFill);
  }

  /** What lights it, the fullest first. */
  get light(): readonly string[] {
    if (this.decided.isNone) return ['nothing to light'];
    if (this.decided.isOverexposed) return ['flash: too much light', 'too much'];
    return {
      ambient: [`daylight, ${bench.words('ambient.exposure-time')}`, 'daylight'],
      flash: [`flash, ${bench.words('needed.flash-power')}`, 'flash'],
      'higher-iso': ['neither: higher ISO', 'neither'],
    }[this.decided.light];
  }

  /** Which chain is chosen, as an address has it. */
  get slug(): string {
    return bench.chosen('chain')!;
  }
  get isOneLens(): boolean {
    return this.slug === oneLens;
  }
  readonly asked = $derived(askedOf(bench.named(...ofAsked)));
  /** The chain as it is set, where it is not one lens; none while it is on its way. */
  readonly set = $derived(this.isOneLens ? undefined : chains.here?.plannedChain(this.slug, this.asked));

  get lens(): LensSlug | undefined {
    return bench.chosen('lens') as LensSlug | undefined;
  }
  /** Own rings go with an own lens, the crate's with the crate's. */
  get ownLens(): string | undefined {
    return this.lens === undefined ? bench.chosenOrOwn('lens') : undefined;
  }
  get lensName(): string {
    const { lens, ownLens } = this;
    if (lens !== undefined) return nameOf(lens);
    return ownLens === undefined
      ? `${bench.words('focal-length')} lens`
      : bench.choices['lens']!.options[ownLens]!.label;
  }
}

export const plan = new Plan();
