import type { subjects } from './subjects.ts';

/** An outline drawing of our own, 100 units wide about its middle, y downwards: SVG paths of its rim and of the lines inside. */
export interface Outline {
  readonly rim: string;
  readonly lines: string;
}

/** What a page with the figure has once (`Definitions.astro`) and the figure refers to; readers' browsers need not load it as script. */
export const outlines: Readonly<Record<keyof typeof subjects, Outline>> = {
  'dinner-plate': { rim: circle(50), lines: circle(34) + circle(31) },
  'bay-leaf': {
    rim: 'M-42 0C-26-18 12-21 50 0C12 21-26 18-42 0z',
    lines: 'M-50 1L-42 0H46M-28 0l13-9M-28 0l13 9M-11 0l16-11.5M-11 0l16 11.5M8 0l15-9M8 0l15 9M25 0l9-5M25 0l9 5',
  },
  'postage-stamp': {
    rim: `M-50-36.6${perforated('h', 15, 1)}${perforated('v', 11, 1)}${perforated('h', 15, -1)}${perforated('v', 11, -1)}z`,
    lines:
      'M-42-29H42V29H-42zM-42 6H42M8 6a10 10 0 0 1 20 0M-33 22q1-24 8-36M-27 22q0-18-3-30M-20 22q4-16 10-24' +
      'M-14-14q7-7 12 1q5-8 13-4M-2 14h14M14 20h20',
  },
  'drawing-pin': { rim: circle(50), lines: `${circle(41)}M-27-13a30 30 0 0 1 20-16` },
  'jumping-spider': {
    rim: 'M0-17q16-6 30-4q8 2 8 21q0 19-8 21q-14 2-30-4q-14 12-30 8q-18-6-18-25q0-19 18-25q16-4 30 8z',
    lines:
      'M29-19L35-38L50-46M20-20L23-40L31-52M9-19L4-38L-4-52M3-17L-12-34L-30-46M29 19L35 38L50 46M20 20L23 40L31 52' +
      'M9 19L4 38L-4 52M3 17L-12 34L-30 46M0-17Q5 0 0 17M29-8a3 3 0 1 0 6 0a3 3 0 1 0-6 0M29 8a3 3 0 1 0 6 0a3 3 0 1 0-6 0' +
      'M26-16a2 2 0 1 0 4 0a2 2 0 1 0-4 0M26 16a2 2 0 1 0 4 0a2 2 0 1 0-4 0M-34-10l10 4M-34 10l10-4',
  },
  'salt-grain': {
    rim: 'M-46-50H46l4 4V46l-4 4H-46l-4-4V-46z',
    lines: 'M-34-33H34V35H-34zM-20-19H20V21H-20zM-50-50L-20-19M50-50L20-19M-50 50L-20 21M50 50L20 21',
  },
};

function circle(radius: number): string {
  return `M${-radius} 0a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0`;
}

/** A side of a stamp, clockwise: teeth with half holes between them. */
function perforated(along: 'h' | 'v', teeth: number, direction: 1 | -1): string {
  const flat = `${along}${1.68 * direction}`;
  const hole = 3.3 * direction;
  return `${flat}a1.65 1.65 0 0 0 ${along === 'h' ? `${hole} 0` : `0 ${hole}`}${flat}`.repeat(teeth);
}
