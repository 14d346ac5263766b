import { prepare } from '#site/figures/picture/prepare.ts';
import { cardInWords, timesInWords } from './card-of-plan.ts';
import ChainNotes from './ChainNotes.svelte';
import CardSheet from './CardSheet.svelte';
import { picturesNow } from './pictures-of-plan.svelte.ts';
import PaperCards from './PaperCards.svelte';
import PicturesOfPlan from './PicturesOfPlan.svelte';
import { noChainNow, planInWords } from './said.svelte.ts';
import TimeSheet from './TimeSheet.svelte';

/** What a plan shows and says besides its drawing, in one piece to be fetched. */
export const laterSheets = {
  CardSheet,
  ChainNotes,
  PaperCards,
  TimeSheet,
  PicturesOfPlan,
  prepare,
  picturesNow,
  planInWords,
  timesInWords,
  cardInWords,
  noChainNow,
};
