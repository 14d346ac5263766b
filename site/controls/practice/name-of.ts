/** A kind of problem in words, as its id says it: `finest-pattern` is “Finest pattern”. */
export function nameOf({ id }: { readonly id: string }): string {
  return id
    .replaceAll('-', ' ')
    .replace('f number', 'f-number')
    .replace('iso', 'ISO')
    .replace(/^./, (first) => first.toUpperCase());
}
