/**
 * Lets the parts of a lesson that are out of sight go without layout, once all has been laid out in its own letters: their heights are then
 * remembered, and nothing moves under a hand that jumps far down the page.
 */
export async function restOutOfSight(lesson: HTMLElement): Promise<void> {
  await document.fonts.ready;
  // A height is remembered at the end of the frame that shows it.
  requestAnimationFrame(() => requestAnimationFrame(() => lesson.toggleAttribute('data-settled', true)));
}
