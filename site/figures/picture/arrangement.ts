import { plainNumber } from '#core/quantity/plain-number.ts';
import { readAddress, withParameter, type AddressPlan } from '#site/state/address.ts';
import type { Notice } from '#site/state/notice.ts';

/** How a picture stands beside the perfectly sharp one, as an address says it; what it leaves open is as the sheet begins. */
export interface Arranged {
  readonly arranged?: string | undefined;
  /** Where the line is that divides two pictures laid on each other: the share of the width before it. */
  readonly divide?: number | undefined;
}

const plan: AddressPlan = {
  inputs: { divide: { least: 0, most: 1, label: 'the place of the dividing line' } },
  choices: {
    arranged: {
      label: 'Layout',
      // By the names that the address has for them, in the words of the sheet's own list.
      options: {
        alone: { label: 'compare with nothing (alone)' },
        'side-by-side': { label: 'side by side (side-by-side)' },
        divided: { label: 'one picture, split in two (divided)' },
        difference: { label: 'the difference only (difference)' },
        enlarged: { label: 'enlarged where they differ most (enlarged)' },
      },
    },
  },
};

/** What *search* says of the picture, and what of that cannot be used. */
export function readArranged(search: string): Arranged & { readonly notices: readonly Notice[] } {
  const { inputs, choices, notices } = readAddress(search, plan);
  return { arranged: choices['arranged'], divide: inputs['divide'], notices };
}

/** *search* with the picture arranged so. */
export function withArranged(search: string, { arranged, divide }: Arranged): string {
  const divided = arranged === 'divided' && divide !== undefined ? plainNumber(divide) : undefined;
  return withParameter(withParameter(search, 'arranged', arranged), 'divide', divided);
}

/** Whether a notice is about how the picture is arranged. */
export const isOfArrangement = ({ field }: Notice): boolean => field === 'arranged' || field === 'divide';
