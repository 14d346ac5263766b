import { quantityOf, type QuantityName } from './vocabulary.ts';

const lifeSize = /^(?<times>.*?) ?(?:[x×]|times)? ?life[ -]size$/i;
const timesInWords: Readonly<Record<string, string>> = { '': '1', half: '1/2', quarter: '1/4', twice: '2' };

/** Both sides of a picture: `36x24`, `36 mm × 24 mm`, and the unit of the second is that of both. */
const sides = /^([\d.,]+) ?(\D*?) ?[x×] ?([\d.,]+) ?(\D*)$/i;

/**
 * What a photographer writes for a quantity, as the plain number and unit that {@link typedNumber} reads: `GN 32`, `ISO 100`, `100 ISO`, `c = 0.03 mm`, `life size`,
 * `half life size`, `36 × 24 mm` for either side of a sensor, `1/250th`. All else stays as it is.
 *
 * @param tidy as `tidied` leaves it
 */
export function asPlainNumber(name: QuantityName, tidy: string): string {
  const { name: words, symbol, writing } = quantityOf(name);
  const times = writing === 'ratio' ? lifeSize.exec(tidy)?.groups!['times'] : undefined;
  if (times !== undefined) return timesInWords[times.toLowerCase()] ?? times;
  const [, side] = /(?:sensor|field)-(width|height)$/.exec(name) ?? [];
  const [, first, firstUnit, second, secondUnit] = (side && sides.exec(tidy)) || [];
  if (first !== undefined && second !== undefined) {
    const isFirst = Number(first.replace(',', '.')) > Number(second.replace(',', '.')) === (side === 'width');
    return isFirst ? `${first} ${firstUnit || secondUnit}` : `${second} ${secondUnit || firstUnit}`;
  }
  const bare = withoutLead(withoutLead(tidy, words, true), symbol, symbol.length > 1);
  if (writing === 'shutter-time') return bare.replace(/^(1 ?\/ ?\d+)th/i, '$1');
  return writing === 'whole' ? bare.replace(new RegExp(` ?${words}$`, 'i'), '') : bare;
}

/** Without the quantity's own word or letter before the number; a letter that may mean more needs its = sign. */
function withoutLead(text: string, lead: string, isClear: boolean): string {
  if (lead === '' || !text.toLowerCase().startsWith(lead.toLowerCase())) return text;
  const rest = text.slice(lead.length).trimStart();
  if (rest.startsWith('=')) return rest.slice(1).trimStart();
  return isClear && /^[\d.,+-]/.test(rest) ? rest : text;
}
