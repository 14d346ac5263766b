/** A Markdown table whose first columns, *words* of them, hold words and the others numbers. */
export function table(head: readonly string[], words: number, rows: readonly (readonly string[])[]): string {
  const rule = head.map((_, column) => (column < words ? '---' : '--:'));
  return [head, rule, ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}
