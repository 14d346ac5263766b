import { stored } from '#site/state/stored.ts';
import { emptyKit, type Kit } from './part.ts';
import { isKit, readKit } from './schema.ts';

/** The reader's kit, kept on their own machine, and checked whenever it is read. */
export const keptKit = stored<Kit>({
  key: 'kit',
  words: 'kit',
  renewed: 'Nothing of it is lost: save what lies there as a file before you remove it.',
  fallback: emptyKit,
  isValid: isKit,
  upgraded: (value) => {
    const reading = readKit(value);
    return reading.kind === 'kit' ? reading.kit : undefined;
  },
});

/** Changes the kit as it is kept at this moment. Gives what is kept then, and says whether the browser has kept it. */
export function changeKit(how: (kit: Kit) => Kit): { readonly kit: Kit; readonly isKept: boolean } {
  const kit = keptKit.change(how);
  return { kit, isKept: JSON.stringify(keptKit.read().value) === JSON.stringify(kit) };
}
