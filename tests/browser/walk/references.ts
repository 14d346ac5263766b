/** What is referred to within *root* and is nowhere in its page: ids of definitions, and of what labels or describes. Runs in the page. */
export function unmetIn(root: Element): readonly string[] {
  const lists = ['for', 'aria-labelledby', 'aria-describedby', 'aria-details', 'aria-controls', 'aria-owns'];
  const named = (value: string) => [...value.matchAll(/url\(["']?#([^"')]+)["']?\)/g)].map(([, id]) => id!);
  const ids = [root, ...root.querySelectorAll('*')].flatMap((one) =>
    [...one.attributes].flatMap(({ name, value }) => {
      if (/^(?:xlink:)?href$/.test(name)) return value.startsWith('#') ? [value.slice(1)] : [];
      return lists.includes(name) ? value.split(/\s+/).filter(Boolean) : named(value);
    }),
  );
  return [...new Set(ids)].filter((id) => root.ownerDocument.getElementById(id) === null);
}
