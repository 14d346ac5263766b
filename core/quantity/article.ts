/** What is read aloud with a vowel first: acorn, f/4, 8, 85, 11, 18, but not 0.8 or 110. */
const vowelFirst = /^(?:f\/|[aeiou8]|1[18](?!\d))/i;

/** *words* with *article*, `a` or `A`, before them: a 50 mm, an 85 mm. */
export function withArticle(article: 'a' | 'A', words: string): string {
  return `${article}${vowelFirst.test(words) ? 'n' : ''} ${words}`;
}
