/** What stands in the place of a caption until there is to be seen what it speaks of. */
export const captionToCome = 'The picture is being computed. The answer follows with it.';
/** What follows once somebody has pressed to go on. */
export const captionToSkip = ' Press again to go on without it.';

/** An answer that waits for its picture: a press that comes before it, perhaps of one who thinks that the first was lost, does not pass it over. */
export class Wait {
  /** What is shown is still being computed: what is told of it waits for that. */
  isOn = $state.raw(false);
  /** Somebody has pressed to go on; not yet at a place that was just come to. */
  isPressed = $state.raw(false);

  /** What stands in the caption's place; nothing where the caption may stand. */
  get words(): string | undefined {
    return this.isOn ? captionToCome + (this.isPressed ? captionToSkip : '') : undefined;
  }

  /** Whether a press that goes *by* so many on stays at an answer; the next one does not. */
  keeps(by: number): boolean {
    const isKept = by === 1 && this.isOn && !this.isPressed;
    this.isPressed ||= isKept;
    return isKept;
  }
}
