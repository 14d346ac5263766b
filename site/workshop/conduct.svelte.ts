import { toggleFullScreen } from '#site/stage/awake.ts';
import { withHand, withHands, withoutLastHand } from './evening.ts';
import { runCommand } from './run-keys.ts';
import type { Shared } from './shared.svelte.ts';

/** What a window does by itself. */
interface Window {
  readonly leave: () => void;
  readonly notes: () => void;
  /** Whether a press that goes *by* so many on is kept, for an answer is still to come. */
  readonly keeps?: (by: number) => boolean;
}

/** The keys of an evening, the same in each of its windows. */
export class Conduct {
  readonly #shared: Shared;
  readonly #window: Window;
  /** Digits of the step to jump to, as far as they are typed. */
  typed = $state('');
  jumping = $state(false);

  constructor(shared: Shared, window: Window) {
    this.#shared = shared;
    this.#window = window;
  }

  /** How many options hands are counted for now. */
  get options(): number {
    const { place, asked, evening } = this.#shared;
    return place.answered || evening.blank ? 0 : (asked?.options.length ?? 0);
  }

  count(option: number, more: number): void {
    const { asked } = this.#shared;
    if (asked) this.#shared.change((evening) => withHands(evening, asked, option, more));
  }

  /** Counts one hand more; it is the next to be taken back. */
  countHand(option: number): void {
    const { asked } = this.#shared;
    if (asked) this.#shared.change((evening) => withHand(evening, asked, option));
  }

  toggle(what: 'blank' | 'phones'): void {
    this.#shared.change((evening) => ({ ...evening, [what]: !evening[what] }));
  }

  /** Goes on or back by so many presses, unless what is seen is to be read first. */
  go(by: number): void {
    if (!this.#window.keeps?.(by)) this.#shared.go(by);
  }

  jumpTo(number: number): void {
    const { plan, pages } = this.#shared;
    const index = Math.min(plan.items.length + pages, Math.max(1, number)) - 1;
    this.#shared.goTo({ index, answered: false });
  }

  press(event: KeyboardEvent): void {
    const command = runCommand(event, this.options, this.jumping);
    if (!command) return;
    event.preventDefault();
    event.stopPropagation();
    const [digits, wasJumping] = [this.typed, this.jumping];
    this.typed = command.kind === 'digit' ? (digits + command.digit).slice(-3) : '';
    this.jumping = command.kind === 'jump' || (command.kind === 'digit' && wasJumping);
    const shared = this.#shared;
    if (command.kind === 'full-screen') toggleFullScreen();
    else if (command.kind === 'blank') this.toggle('blank');
    else if (shared.evening.blank) this.toggle('blank');
    else if (command.kind === 'press') shared.press(command.what);
    else if (command.kind === 'leave') {
      if (shared.evening.phones) this.toggle('phones');
      else if (digits === '' && !wasJumping) this.#window.leave();
    } else if (command.kind === 'enter' && digits !== '') this.jumpTo(Number(digits));
    else if (command.kind === 'enter') this.go(1);
    else if (command.kind === 'go') this.go(command.by);
    else if (command.kind === 'phones') this.toggle('phones');
    else if (command.kind === 'notes') this.#window.notes();
    else if (command.kind === 'hand') this.countHand(command.option);
    else if (command.kind === 'hand-back') {
      const { asked } = shared;
      if (asked) shared.change((evening) => withoutLastHand(evening, asked));
    }
  }
}
