import ChainList from './ChainList.svelte';
import { rangesInWords, reachInWords, rowOf } from './row-of.ts';
import { rangesOfRow } from './row-ranges.ts';

/** The list below the figure with all that its rows say and lead to, in one piece to be fetched. */
export const listOfChains = { ChainList, rowOf, rangesOfRow, rangesInWords, reachInWords };
