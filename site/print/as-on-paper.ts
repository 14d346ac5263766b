const swapped = { print: 'screen', screen: 'print' } as const;

/** Makes rules for paper hold on the screen and the other way round, in every style sheet of the page. */
function swapMedia(rules: Iterable<CSSRule>): void {
  for (const rule of rules) {
    if (rule instanceof CSSMediaRule)
      rule.media.mediaText = rule.media.mediaText.replace(
        /\b(?:print|screen)\b/g,
        (medium) => swapped[medium as keyof typeof swapped],
      );
    if (rule instanceof CSSGroupingRule) swapMedia(rule.cssRules);
  }
}

/**
 * Calls *measure* with the page styled as it will be printed, and puts everything back before anybody sees it.
 *
 * Browsers say that they are about to print, but not how it will come out: this is how a page finds out.
 */
export function asOnPaper(measure: () => void): void {
  const scrolled = [...document.querySelectorAll('*')]
    .filter(({ scrollTop }) => scrollTop > 0)
    .map((element) => ({ element, top: element.scrollTop }));
  const swap = () => {
    for (const sheet of document.styleSheets) swapMedia(sheet.cssRules);
  };
  swap();
  try {
    measure();
  } finally {
    swap();
    for (const { element, top } of scrolled) element.scrollTop = top;
  }
}
