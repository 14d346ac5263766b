import { kitSpeed, kitSpeedTable } from './kit-speed.ts';
import { verdict } from './limits.ts';
import { mergeSpeed } from './merge-speed.ts';
import { pictureSpeed, slices } from './picture-speed.ts';
import { rigSpeed } from './rig-speed.ts';
import { sketchSpeed } from './sketch-speed.ts';
import { table } from './table.ts';
import { frequencies, radii, waveSpeed } from './wave-speed.ts';

/** One part of the core, measured: what it is called and what is said of it, as Markdown. */
interface Part {
  readonly name: string;
  readonly measure: () => string;
}

const frame = 1000 / 60;

function rig(): string {
  const { solvedPerSecond, fromPartsPerSecond, timesByHand, timesTraced, timesTracedBefore } = rigSpeed();
  const millions = (count: number) => `${(count / 1e6).toFixed(2)} million a second`;
  return table(['camera, converter, ring, lens, close-up lens', 'measured', 'limit', ''], 1, [
    ['solved', millions(solvedPerSecond), 'at least 1 million', verdict(solvedPerSecond >= 1e6)],
    ['checked, put together and solved', millions(fromPartsPerSecond), '', ''],
    [
      'time, over that of the chain multiplied out by hand',
      timesByHand.toFixed(2),
      'at most 3',
      verdict(timesByHand <= 3),
    ],
    [
      'from parts, a lens of 22 surfaces traced at a new setting, over one focused as a whole',
      timesTraced.toFixed(1),
      'at most 100',
      verdict(timesTraced <= 100),
    ],
    [
      'the same at a setting it was at before',
      timesTracedBefore.toFixed(1),
      'at most 4',
      verdict(timesTracedBefore <= 4),
    ],
  ]);
}

function kit(): string {
  return `Each size searched several times in one run; the first search of a run is slower, its code being new to the machine. Limit for the kit of
3 cameras, 6 lenses, 5 rings, 3 close-up lenses and 1 converter: 100 ms.

${kitSpeedTable(kitSpeed())}`;
}

function waves(): string {
  const rows = waveSpeed().map((speed) => {
    const together = speed.spread + speed.transfer;
    return [
      `${speed.defocusAberration} λ defocus, ${speed.sphericalAberration} λ spherical`,
      speed.spread.toFixed(2),
      speed.transfer.toFixed(2),
      (together / frame).toFixed(3),
      ((speed.plainSpread + speed.plainTransfer) / together).toFixed(0),
      speed.apart.toExponential(0),
      verdict(together <= frame / 4 && speed.apart <= 2e-6),
    ];
  });
  return `The image of a point at ${radii} radii and the transfer at ${frequencies} frequencies. Limit: together a quarter of a frame at 60 Hz, right to 1e-6.

${table(['pupil', 'image, ms', 'transfer, ms', 'of a frame', 'times faster than plain sums', 'apart from them', 'limits'], 1, rows)}`;
}

function picture(): string {
  const rows = pictureSpeed().map((speed) => {
    const times = (value: number | undefined) => (value === undefined ? 'no scipy here' : value.toFixed(2));
    return [
      speed.subject,
      speed.channels === 3 ? 'in colour' : 'luminance',
      speed.whole.toFixed(0),
      speed.timesTransforms.toFixed(2),
      times(speed.timesCompiled),
      times(speed.convolutionsTimesCompiled),
      speed.channels === 3 ? verdict(speed.timesTransforms <= 3) : '',
    ];
  });
  return `768 × 512 pixels in ${slices} slices. Limit for the picture that the pages show, which is in colour: at most 3 times its own Fourier transforms;
aimed at: twice the same convolutions in compiled code on one thread. Luminance alone stands beside it: half the transforms, and as much
besides them.

${table(['scene', '', 'ms', 'times its transforms', 'times compiled', 'convolutions alone, times compiled', 'limits'], 2, rows)}`;
}

function sketches(): string {
  const rows = sketchSpeed().map(({ subject, drawnAnew, drawnBefore }) => [
    subject,
    drawnAnew.toFixed(0),
    drawnBefore.toFixed(0),
    verdict(Math.max(drawnAnew, drawnBefore) <= 50),
  ]);
  return `What stands there while a hand moves, in colour; the 95th percentile of 30 movements. Limit: 50 ms.

${table(['subject', 'drawn anew, ms', 'drawn before, ms', 'limits'], 1, rows)}`;
}

function merging(): string {
  const rows = mergeSpeed().map(({ frames, add, result, memory }) => [
    String(frames),
    add.toFixed(0),
    result.toFixed(0),
    memory.toFixed(0),
    verdict(memory <= 400),
  ]);
  return `768 × 512 pixels of three channels. Limit: 400 MB of arrays, whatever the number of frames; what waits to be collected is counted.

${table(['frames', 'one more, ms', 'result, ms', 'MB at most', 'limits'], 0, rows)}`;
}

/** A new part of the core's speed is one more line here. */
const parts: readonly Part[] = [
  { name: 'One rig', measure: rig },
  { name: 'A kit searched', measure: kit },
  { name: 'Waves', measure: waves },
  { name: 'A picture', measure: picture },
  { name: 'Sketches', measure: sketches },
  { name: 'A stack merged', measure: merging },
];

/** Measures every part of the core on one core of the machine, and says so as a page of Markdown. */
export function coreReport(machine: string): string {
  const sections = parts.map(({ name, measure }) => {
    process.stdout.write(`${name}\n`);
    return `## ${name}\n\n${measure()}\n`;
  });
  return `# What the core takes

Written by \`npm run bench -- core\`. ${machine}. Times are of one core; ratios are of two ways in one run.

${sections.join('\n')}`;
}
