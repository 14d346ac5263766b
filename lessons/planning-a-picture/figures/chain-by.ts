import { subjectDepthInOneFrame } from '#core/depth/subject-depth-in-one-frame.formula.ts';
import { searchSoundKit, type KitSearch } from '#core/rig/kit/search-sound-kit.ts';
import { verdicts } from '#core/rig/kit/verdict.ts';
import { readChainBy, spellsOut, type ChainReading } from '#site/chain/chain-from-text.ts';
import { chainOfRows, ownCamera } from '#site/chain/chain-of-rows.ts';
import { crateThing } from '#site/chain/crate-things.ts';
import type { Thing } from '#site/chain/thing.ts';
import { bodies } from '#site/state/crate.ts';
import { keyOf, rowsOn, type KitSlug } from '#site/state/kits.ts';
import { remembered } from '#site/state/remembered.ts';
import { ownKit, type AskedOfChain } from './asked-of-chain.ts';
import { ownReader } from './own-reader.ts';

/** A chain, not yet set for a plan. */
export interface FoundChain extends ChainReading {
  /** Another where the same words stand for something else than before. */
  readonly edition: string;
}

const kitOf: Readonly<Record<string, KitSlug>> = { bag: 'bag', crate: 'crate', [ownKit]: 'own' };
const kept = remembered<FoundChain>(60);

/** The chain that a choice or an address means: the best of a kit for what is asked, or one that is spelled out. */
export function chainBy(slug: string, asked: AskedOfChain): FoundChain {
  const kit = kitOf[slug];
  const edition = kit === undefined ? readerEdition(slug) : keyOf(kit);
  const key = kit === undefined ? `${edition} ${slug}` : JSON.stringify([edition, asked]);
  return kept(key, () => ({ ...(kit === undefined ? spelledChain(slug) : best(kit, asked)), edition }));
}

const readerEdition = (text: string) => (spellsOut(text) && !ownReader.here ? 'without own parts' : 'as spelled out');

/** Reads a chain that an address spells out; own parts of it once what reads them is here. */
export function spelledChain(text: string): ChainReading {
  if (!spellsOut(text)) return readChainBy(text, undefined);
  const reader = ownReader.here;
  if (reader) return readChainBy(text, reader);
  ownReader.fetch();
  const { chain } = readChainBy(text, undefined);
  return { chain, notices: ['Its own parts are being read.'] };
}

/** However light or dark it is: how it is lit is asked later. */
const brightEnough = { luminance: 1e6, iso: 100, subjectSpeed: 0, longestExposure: 1 };
/** Of the most that one frame can hold, so much each frame of a stack is asked to: then all that frame the subject close alike, and fewer parts and more room decide. */
const inReach = 0.9;

/** The best chain of a kit that gives what is asked; where none does, the one that comes farthest. */
function best(kit: KitSlug, asked: AskedOfChain): ChainReading {
  const search = searchSoundKit(
    rowsOn(kit, [], asked),
    {
      ...brightEnough,
      // What fills the frame is what is wanted of the field.
      subjectWidth: asked.sensorWidth / asked.magnification,
      subjectDepth: Math.min(asked.subjectDepth, inReach * subjectDepthInOneFrame(asked)),
      leastFill: 1,
      nearestDistance: asked.flightDistance,
      wavelength: asked.wavelength,
    },
    Infinity,
  );
  const chain = search.suited[0] ?? farthest(search, asked.magnification);
  const { ids } = search.chain(chain);
  return { chain: chainOfRows(cameraFor(kit, asked.sensorWidth), ids), notices: [] };
}

/** Of those that do not suit the one that came past most questions, and of these the nearest in size. */
function farthest(search: KitSearch, wanted: number): number {
  let found = 0;
  let least = Infinity;
  for (let chain = 0; chain < search.count; chain++) {
    const { magnification } = search.judgementOf(chain);
    const off = magnification > 0 ? Math.min(50, Math.abs(Math.log(magnification / wanted))) : 60;
    const lack = 100 * (verdicts.length - verdicts.indexOf(search.verdictOf(chain))) + off;
    if (lack >= least) continue;
    least = lack;
    found = chain;
  }
  return found;
}

function cameraFor(kit: KitSlug, sensorWidth: number): Thing {
  const slug = Object.entries(bodies).find(([, body]) => body['sensor-width'] === sensorWidth)?.[0];
  return (kit === 'own' ? ownCamera(sensorWidth) : undefined) ?? crateThing(slug ?? 'body-36');
}
