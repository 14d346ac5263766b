import { readChainBy, type ChainReading } from './chain-from-text.ts';
import { addressOfChain, textOfChain } from './chain-in-text.ts';
import { readOwn } from './own-in-text.ts';

/*
 * A chain as a text and back, for those who always need both ways and a reader's own parts with them. A page that rather fetches what reads own parts where
 * there are any goes by `chain-from-text.ts`.
 */

/**
 * Reads a chain from a text as {@link writeChain} writes it: parts of the crate by their slugs, a reader's own as they are spelled out. No text makes it
 * throw; what cannot be used is left out and named.
 */
export const readChain = (text: string): ChainReading => readChainBy(text, readOwn);

/** The chain as a text. */
export const writeChain = textOfChain;

/** The same as the value of a query's parameter. */
export const chainInAddress = addressOfChain;
