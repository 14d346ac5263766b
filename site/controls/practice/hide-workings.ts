/** Hides the workings, which stand in the page from the build on. */
export function hideWorkings(): void {
  for (const place of document.querySelectorAll<HTMLElement>('[data-working]')) place.hidden = true;
}
