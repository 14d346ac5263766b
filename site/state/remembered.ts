/** Keeps what was made by its key, for what is asked again at every move; past *most* of them it begins anew. */
export function remembered<Value extends object>(most: number): (key: string, make: () => Value) => Value {
  const known = new Map<string, Value>();
  return (key, make) => {
    const found = known.get(key);
    if (found) return found;
    const made = make();
    if (known.size > most) known.clear();
    known.set(key, made);
    return made;
  };
}
