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

/** A caption with its `{quantity}` marks replaced by what *print* gives for them. */
export function fillCaption(caption: string, print: (id: string) => string | undefined): string {
  return caption.replace(/\{([a-z.-]+)\}/g, (mark, id: string) => print(id) ?? mark);
}
