import katex from 'katex';
import type { Formula } from '#core/quantity/formula.ts';
import { texOf } from '#core/quantity/glossary.ts';
import { ofConstant } from '#core/quantity/printed-line.ts';
import { partOf } from '#core/quantity/part.ts';
import { quantityOf, type QuantityName } from '#core/quantity/vocabulary.ts';
import { widthOf } from './width.ts';

/**
 * Formulas are rendered while the site is built; no formula engine travels to readers.
 *
 * Each `\q{id}` becomes either the quantity's letter, marked `data-quantity`, or its number, marked `data-number`:
 * a text node in the HTML half and one in the MathML half, which the page rewrites in place as the reader drags.
 */
const quantityMark = /\\q\{([a-z.-]+)\}/g;
const quantityPower = /\\q\{([a-z.-]+)\}\^/g;
/** A length in metres, its millimetres over 1000. As an equation between quantities it stands as it is, and its number comes with its metres. */
const inMetres = /(\\q\{[a-z.-]+\})\/1000/g;
/** A constant written out in all its digits; in letters it is rounded, in a line it has as many as that takes. */
const longConstant = /\d\.\d{6,}/g;
const numberMark = /@([a-z.-]+)@/g;
/** KaTeX repeats its source inside the MathML; readers have no use for it. */
const texAnnotation = /<annotation encoding="application\/x-tex">.*?<\/annotation>/s;
const mathmlNumber = /<mtext>@([a-z.-]+)@<\/mtext>/g;

/** A column of a phone holds so many em of type that can be read. */
const column = 30;

/**
 * HTML with MathML of a formula in letters. Where names in the place of letters make it too wide for a phone, what is summed up is called by
 * its part alone: *motion blur* is that of turning, sideways and subject. Throws what KaTeX throws on bad TeX.
 */
export function symbolicFormula(tex: string): string {
  const short = tex
    .replace(inMetres, '$1')
    .replace(longConstant, (digits) => String(Number(Number(digits).toPrecision(3))));
  const full = short.replace(quantityMark, (_, id: QuantityName) => letter(id));
  if (widthOf(full) <= column) return render(full);
  const [, gives] = [...short.matchAll(quantityMark)][0] ?? [];
  return render(short.replace(quantityMark, (_, id: QuantityName) => partAlone(id, gives) ?? letter(id)));
}

/**
 * HTML with MathML of a formula with numbers put in: the letter on the left, the numbers in its place on the right, the result.
 * *texts* has each quantity's, with its unit; a dash stands where there is none.
 */
export function numericFormula(
  { tex, gives }: Pick<Formula<never>, 'tex' | 'gives'>,
  texts: Readonly<Record<string, string>>,
): string {
  const numbers = (name: string) => texts[name] ?? '—';
  // Letters may stand side by side, numbers may not; and a power is that of the number with its unit.
  const rightHandSide = tex.slice(tex.indexOf('=') + 1).replaceAll('\\,', '\\times ');
  const marked = rightHandSide
    .replace(inMetres, '$1')
    .replace(quantityPower, (whole, id: QuantityName) =>
      quantityOf(id).base === '' ? whole : `\\left(\\q{${id}}\\right)^`,
    )
    .replace(quantityMark, (_, id: string) => `\\text{@${id}@}`)
    .replace(longConstant, `\\text{@${ofConstant}@}`);
  const [left, result] = [letter(gives), `\\text{@${gives}@}`];
  // A name in place of a letter takes so much room that the result goes below, where it cannot be missed.
  const line = texOf(gives).startsWith('\\text')
    ? `\\begin{aligned}${left} &= ${marked} \\\\ &= ${result}\\end{aligned}`
    : `${left} = ${marked} = ${result}`;
  // Numbers are set in the text's face, whose digits are a little wider than those of formulas.
  const filled = line.replace(numberMark, (_, id: QuantityName) => '0'.repeat(Math.ceil(1.04 * numbers(id).length)));
  return render(line, widthOf(filled))
    .replace(mathmlNumber, (_, id: QuantityName) => `<mtext data-number="${id}">${numbers(id)}</mtext>`)
    .replace(numberMark, (_, id: QuantityName) => `<span class="number" data-number="${id}">${numbers(id)}</span>`);
}

function letter(id: QuantityName, tex = texOf(id)): string {
  return `\\htmlData{quantity=${id}}{${tex}}`;
}

/** The name of a part, of a quantity that has no letter and is the one that the formula *gives*. */
function partAlone(id: QuantityName, gives: string | undefined): string | undefined {
  const part = partOf(id);
  const isOfGiven = part !== '' && id.endsWith(`.${gives}`) && texOf(id).startsWith('\\text');
  return isOfGiven ? letter(id, `\\text{${part}}`) : undefined;
}

/** Says how wide it is, in em, so that its type can follow the column: see `.formula-lines` in type.css. */
function render(tex: string, width = widthOf(tex)): string {
  const html = katex.renderToString(tex, { output: 'htmlAndMathml', displayMode: true, strict, trust: isDataMark });
  return html
    .replace(texAnnotation, '')
    .replace('class="katex-display"', `class="katex-display" style="--ems:${width.toFixed(1)}"`);
}

/** The one departure from plain LaTeX is the data mark; anything else is an author's mistake. */
function strict(code: string): 'ignore' | 'error' {
  return code === 'htmlExtension' ? 'ignore' : 'error';
}

function isDataMark({ command }: { command: string }): boolean {
  return command === '\\htmlData';
}
