/** A step of the demonstration as the page lists it in its part for the instructor. */
export interface ListedStep {
  /** Query that sets the figure and opens the step. */
  readonly address: string;
  readonly question: string;
  /** Caption with `{quantity}` marks. */
  readonly caption: string;
}

/** The steps listed in the page, in their order. */
export function listedSteps(root: ParentNode): readonly ListedStep[] {
  return [...root.querySelectorAll<HTMLElement>('[data-stage-caption]')].map((item) => {
    const link = item.querySelector('a')!;
    return { address: link.getAttribute('href')!, question: link.textContent, caption: item.dataset['stageCaption']! };
  });
}

/** The step number an address asks for, 1 to *count*; undefined where it asks for none or for nonsense. */
export function stepNumber(search: string, count: number): number | undefined {
  const text = new URLSearchParams(search).get('stage') ?? '';
  const number = /^\d{1,3}$/.test(text) ? Number(text) : 0;
  return number >= 1 && number <= count ? number : undefined;
}

/** A caption with its `{quantity}` marks replaced by what *print* gives for them. */
export function fillCaption(caption: string, print: (id: string) => string | undefined): string {
  return caption.replace(/\{([a-z.-]+)\}/g, (mark, id: string) => print(id) ?? mark);
}
