/**
 * What of the projected view lies on something else, or is cut off, in words; nothing where all has room. Runs in the page, so names nothing
 * outside itself.
 */
export function crowded(): string[] {
  const stage = document.querySelector('.stage')!;
  const faults: string[] = [];
  const said = (element: Element) => `“${element.textContent.trim().replace(/\s+/g, ' ').slice(0, 40)}”`;
  const boxOf = (element: Element) => {
    const { left, top, right, bottom } = element.getBoundingClientRect();
    return { left, top, right, bottom };
  };
  type Box = ReturnType<typeof boxOf>;
  const isSeen = (element: Element) => element.checkVisibility({ opacityProperty: true, visibilityProperty: true });
  /** The window of a drawing within a drawing, where what leaves it is not shown: its own box counts all that it holds. */
  const windowOf = (drawing: SVGSVGElement): Box => {
    const { a, d, e, f } = (drawing.parentElement as unknown as SVGGraphicsElement).getScreenCTM()!;
    const [x, y, width, height] = [drawing.x, drawing.y, drawing.width, drawing.height].map(
      (length) => length.baseVal.value,
    ) as [number, number, number, number];
    return { left: e + a * x, top: f + d * y, right: e + a * (x + width), bottom: f + d * (y + height) };
  };
  /** Of a line of text the letters, without the room that the face keeps over and under them, as far as its drawing shows them. */
  const letters = (text: SVGTextElement) => {
    const { left, top, right, bottom } = boxOf(text);
    const { a, b } = text.getScreenCTM()!;
    const isLevel = Math.abs(a) > Math.abs(b);
    const slack = 0.18 * (isLevel ? bottom - top : right - left);
    const box = isLevel
      ? { left, top: top + slack, right, bottom: bottom - slack }
      : { left: left + slack, top, right: right - slack, bottom };
    for (let drawing = text.ownerSVGElement; drawing?.ownerSVGElement; drawing = drawing.ownerSVGElement) {
      if (getComputedStyle(drawing).overflow === 'visible') continue;
      const shown = windowOf(drawing);
      box.left = Math.max(box.left, shown.left);
      box.top = Math.max(box.top, shown.top);
      box.right = Math.min(box.right, shown.right);
      box.bottom = Math.min(box.bottom, shown.bottom);
    }
    return box;
  };
  const overlap = (one: Box, other: Box, slack = 1.5) =>
    Math.min(one.right, other.right) - Math.max(one.left, other.left) > slack &&
    Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > slack;
  const within = (inner: Box, outer: Box, slack = 1.5) =>
    inner.left >= outer.left - slack &&
    inner.right <= outer.right + slack &&
    inner.top >= outer.top - slack &&
    inner.bottom <= outer.bottom + slack;

  const sheet = boxOf(stage.querySelector('.figure .place')!);
  const texts = [...stage.querySelectorAll<SVGTextElement>('.figure svg text')]
    .filter((text) => isSeen(text) && text.textContent.trim() !== '')
    .map((text) => ({ text, box: letters(text), block: text.closest('.title-block') }))
    .filter(({ box }) => box.left < box.right && box.top < box.bottom);
  for (const [index, { text, box, block }] of texts.entries()) {
    if (!within(box, sheet)) faults.push(`${said(text)} is cut off`);
    for (const other of texts.slice(index + 1))
      if (!(block && block === other.block) && overlap(box, other.box))
        faults.push(`${said(text)} lies on ${said(other.text)}`);
  }
  for (const block of stage.querySelectorAll('.title-block'))
    for (const { text, box, block: own } of texts)
      if (own !== block && overlap(box, boxOf(block))) faults.push(`the title block lies on ${said(text)}`);

  const spoken = [...stage.querySelectorAll(':scope > :is(.question, .caption, .below)')];
  const view = { left: 0, top: 0, right: innerWidth, bottom: innerHeight };
  for (const element of spoken) {
    const range = document.createRange();
    range.selectNodeContents(element);
    const box = range.getBoundingClientRect();
    if (box.width === 0) continue;
    if (!within(box, view)) faults.push(`${said(element)} is cut off`);
    if (overlap(box, sheet)) faults.push(`${said(element)} lies on the figure`);
  }
  for (const button of stage.querySelectorAll('nav button')) {
    const box = boxOf(button);
    if (!within(box, view)) faults.push(`a button is cut off`);
    if (overlap(box, sheet)) faults.push('a button lies on the figure');
    for (const element of spoken) {
      const range = document.createRange();
      range.selectNodeContents(element);
      if ([...range.getClientRects()].some((line) => overlap(box, line)))
        faults.push(`a button lies on ${said(element)}`);
    }
  }
  for (const element of [document.documentElement, stage, ...stage.querySelectorAll('*')]) {
    const { overflowX, overflowY } = getComputedStyle(element);
    const bars = /auto|scroll/;
    if (element === document.documentElement && overflowY !== 'hidden') faults.push('the page scrolls');
    if (
      (bars.test(overflowX) && element.scrollWidth > element.clientWidth + 1) ||
      (bars.test(overflowY) && element.scrollHeight > element.clientHeight + 1)
    )
      faults.push(`${element.className} scrolls`);
  }
  if ((sheet.bottom - sheet.top) / innerHeight < 0.5) faults.push('the figure has less than half of the height');
  return [...new Set(faults)];
}
