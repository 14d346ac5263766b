/** Turns the example around *button* from the crate's numbers to the figure's or back. */
export function switchExample(button: HTMLElement): void {
  const follows = button.closest('[data-example]')!.toggleAttribute('data-following');
  button.setAttribute('aria-pressed', String(follows));
}
