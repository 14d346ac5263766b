/** A piece of work and the names of those that must have ended before it starts. */
interface Work {
  readonly name: string;
  readonly after: readonly string[];
}

/**
 * Does all *works*, in their order as far as what they wait for allows, at most *lanes* at a time. Throws where some wait for each other, or
 * for a name that nobody has.
 */
export async function inLanes<One extends Work>(
  lanes: number,
  works: readonly One[],
  work: (one: One) => Promise<void>,
): Promise<void> {
  const waiting = [...works];
  const ended = new Set<string>();
  const underWay = new Map<string, Promise<void>>();
  while (waiting.length + underWay.size > 0) {
    const next = waiting.findIndex(({ after }) => after.every((name) => ended.has(name)));
    if (next >= 0 && underWay.size < lanes) {
      const [one] = waiting.splice(next, 1) as [One];
      const end = work(one).then(() => {
        underWay.delete(one.name);
        ended.add(one.name);
      });
      underWay.set(one.name, end);
    } else if (underWay.size > 0) {
      await Promise.race(underWay.values());
    } else {
      throw new Error(`${waiting.map(({ name }) => name).join(', ')}: waiting for what never ends.`);
    }
  }
}
