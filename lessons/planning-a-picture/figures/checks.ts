import type { Planned } from './subjects.ts';

/** What is looked at last: two things of the subject's own, and what can be hurt. One line of the card each. */
export const checks: Readonly<Record<Planned, readonly [string, string, string]>> = {
  'jumping-spider': ['eyes first', 'press as it stops', 'No flash near eyes; leave if it is disturbed'],
  'flower-detail': ['wait for the end of the swing', 'lay the plane along', 'Pick and bend nothing'],
  butterfly: ['no shadow on it', 'wings square to you', 'Go near slowly; no chasing'],
  'hoverfly-head': ['eyes first', 'near end first', 'No chilling; flash off if it flinches'],
  'water-drop': [
    'look at what hangs behind: it is in it, upside down',
    'near end first',
    'Keep water from mains and lamps',
  ],
  'frost-crystal': ['breath away', 'near end first', 'Cold hands, slippery ground'],
  'soap-film': ['place the card before you focus', 'focus the black edge', 'Wipe wet floors; no soap near mains'],
  stamp: ['a mirror in its place squares you up', 'two lights at 45°', 'Lamps get hot: keep paper away'],
  own: ['what matters most is in the plane', 'look at the corners', 'Harm nothing; local rules come first'],
};
