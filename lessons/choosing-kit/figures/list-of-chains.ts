import ChainList from './ChainList.svelte';
import { benchLink, planLink } from './chain-links.ts';
import { rangesOfRow } from './row-ranges.ts';

/** The list below the figure with all that its rows say and lead to, in one piece to be fetched. */
export const listOfChains = { ChainList, benchLink, planLink, rangesOfRow };
