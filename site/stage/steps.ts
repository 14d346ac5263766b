/** A step of the demonstration as the page lists it in its part for the instructor. */
export interface ListedStep {
  /** What addresses know it by: its id, and what older ones call it. */
  readonly names: readonly string[];
  /** Queries that set the figure and open the step: at its question, at its answer. */
  readonly asked: string;
  readonly answered: string;
  readonly question: string;
  /** Caption with `{quantity}` marks. */
  readonly caption: string;
  /** Ids of what the figure leaves out while the question is open. */
  readonly withheld: readonly string[];
  /** What hands may be shown for. */
  readonly options: readonly string[];
}

const mark = /\{([a-z.-]+)\}/g;

/** The steps listed in the page, in their order. */
export function listedSteps(root: ParentNode): readonly ListedStep[] {
  return [...root.querySelectorAll<HTMLElement>('[data-stage-caption]')].map((item) => {
    const link = item.querySelector('a')!;
    return {
      names: item.dataset['stageNames']!.split(' '),
      asked: link.getAttribute('href')!,
      answered: item.dataset['stageAnswered']!,
      question: link.textContent,
      caption: item.dataset['stageCaption']!,
      withheld: item.dataset['stageWithheld']?.split(' ') ?? [],
      options: item.dataset['stageOptions']?.split('|') ?? [],
    };
  });
}

/** A caption with its `{quantity}` marks replaced by what *print* gives for them. */
export function fillCaption(caption: string, print: (id: string) => string | undefined): string {
  return caption.replace(mark, (whole, id: string) => print(id) ?? whole);
}

/** *text* with every number kept beside its unit, where lines break. */
export function unbroken(text: string): string {
  return text.replace(/(\d) (?=(?:mm|cm|m|s|nm|stops?|dpt)\b)/g, '$1\u00a0');
}

/** The quantities that a caption names, each once. */
export function quantitiesIn(caption: string): readonly string[] {
  return [...new Set([...caption.matchAll(mark)].map(([, id]) => id!))];
}
