/** The version in which kits are written. */
export const currentVersion = 2;

/** What makes a kit of one version into one of the next, by the version that it is of. */
export type Upgrades = Readonly<Record<number, (old: Readonly<Record<string, unknown>>) => Record<string, unknown>>>;

const upgrades: Upgrades = {
  // Tube lenses, objectives for a tube and converters by their planes are new, and nothing else is another: so an earlier edition says that a kit is later
  // than it knows, not that there is something strange in it.
  1: (old) => ({ ...old }),
};

/** A kit of *version* brought up to the present one, step by step. It is checked afterwards, as any is. */
export function upgraded(
  data: Readonly<Record<string, unknown>>,
  version: number,
  steps: Upgrades = upgrades,
  to: number = currentVersion,
): Readonly<Record<string, unknown>> {
  let kit = data;
  for (let at = version; at < to; at++) kit = { ...steps[at]!(kit), version: at + 1 };
  return kit;
}
