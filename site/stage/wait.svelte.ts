/** What stands in the place of a caption until there is to be seen what it speaks of. */
export const captionToCome = 'The picture is being computed. The answer follows with it.';
/** The same once somebody has pressed to go on. */
export const captionToSkip = 'The picture is being computed. Press again to go on without the answer.';

/** An answer that waits for its picture: a press that comes before it, perhaps of one who thinks that the first was lost, does not pass it over. */
export class Wait {
  /** What is shown is still being computed: what is told of it waits for that. */
  isOn = $state.raw(false);
  #isPressed = $state.raw(false);

  /** What stands in the caption's place; nothing where the caption may stand. */
  readonly words = $derived.by(() => (!this.isOn ? undefined : this.#isPressed ? captionToSkip : captionToCome));

  /** Another place: whatever was pressed before was for the one that is left. */
  begin(): void {
    this.#isPressed = false;
  }

  /** Whether a press that goes *by* so many on stays at an answer; the next one does not. */
  keeps(by: number): boolean {
    if (by !== 1 || !this.isOn || this.#isPressed) return false;
    this.#isPressed = true;
    return true;
  }
}
