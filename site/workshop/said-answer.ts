const plain = (text: string) => text.replace(/\s+/g, ' ').trim().toLowerCase();

/** The first word of a text that is no article and takes nothing back: `third` of “A third: 1.2 mm”, `one` of “About one”. */
const firstWord = (text: string) =>
  /^(?:(?:an?|the|about|often) )?([\p{L}\p{N}./×-]*[\p{L}\p{N}×])/u.exec(plain(text))?.[1];

/** What is so, as it is printed: the option that holds and what is said for it; the latter alone where it begins with the option, or with its first word. */
export function saidAnswer(option: string | undefined, caption: string): string {
  if (option === undefined) return caption;
  const word = firstWord(option);
  const begins =
    plain(caption).startsWith(plain(option)) && !/^[\p{L}\p{N}]/u.test(plain(caption).slice(plain(option).length));
  const isSaid = begins || (word !== undefined && word === firstWord(caption));
  if (isSaid) return caption;
  return `${option}${/[.!?…]$/.test(option) ? '' : '.'} ${caption}`.trim();
}
