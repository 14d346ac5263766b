/** A slash anywhere but in a field opens the search, as on many pages of text; while a lesson is projected the keys are the clicker's. */
export function slashOpensSearch(): void {
  addEventListener('keydown', (event) => {
    const { target } = event;
    const isTyping =
      target instanceof HTMLElement && (target.matches('input, textarea, select') || target.isContentEditable);
    if (
      event.key !== '/' ||
      isTyping ||
      event.ctrlKey ||
      event.metaKey ||
      event.altKey ||
      document.querySelector('.stage')
    )
      return;
    event.preventDefault();
    const field = document.querySelector<HTMLElement>('#search');
    if (field) field.focus();
    else document.querySelector<HTMLAnchorElement>('nav a[href$="/search/"]')!.click();
  });
}
