import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { AnsweredName, BuiltChain } from './answers.ts';
import type { Ranges } from './ranges.ts';
import { spanText } from './span-text.ts';
import { answerText } from './words.ts';

/** One question for the room about the chains as they stand, its answer, and what the figure leaves out until then. */
export interface Asked {
  readonly question: string;
  readonly caption: string;
  readonly withheld: readonly QuantityName[];
}

interface Plan {
  readonly name: AnsweredName;
  readonly alone: string;
  readonly two: string;
  readonly says: (value: string) => string;
}

const plans: readonly Plan[] = [
  {
    name: 'magnification',
    alone: 'How large is the image of each millimetre of the subject?',
    two: 'Which chain shows the subject larger?',
    says: (value) => `${value} as large on the sensor`,
  },
  {
    name: 'field-width',
    alone: 'How wide is what fills the picture?',
    two: 'Which chain takes in more?',
    says: (value) => `${value} wide`,
  },
  {
    name: 'working-distance',
    alone: 'How much room is left in front?',
    two: 'Which chain leaves more room in front?',
    says: (value) => `w = ${value}`,
  },
  {
    name: 'effective-f-number',
    alone: 'So close, at which f-number does it really work?',
    two: 'Which chain is darker?',
    says: (value) => `effective f-number ${value}`,
  },
  {
    name: 'depth-of-field',
    alone: 'How much of the subject’s depth looks sharp?',
    two: 'Which chain sees deeper?',
    says: (value) => `${value} deep`,
  },
  {
    name: 'airy-diameter',
    alone: 'How wide is a point on the sensor, at best?',
    two: 'Which chain blurs a point more?',
    says: (value) => `${value} across`,
  },
];

/** What a drawing says of a quantity beside its own dimension. */
const withheldWith: Readonly<Partial<Record<AnsweredName, readonly QuantityName[]>>> = {
  'working-distance': ['focus-distance'],
  magnification: ['field-width'],
};

/** Questions about one chain or two, as far as they have answers, in the order in which one photographs; answers with their ranges, where those are given. */
export function demonstration(chains: readonly BuiltChain[], ranges: readonly Ranges[] = []): readonly Asked[] {
  return plans.flatMap(({ name, alone, two, says }) => {
    const values = chains.map(({ answers }) => answers[name]);
    if (values.length === 0 || values.some((value) => value === undefined)) return [];
    const said = values.map((value) => says(answerText(name, value!)));
    const between = said.map((words, at) => {
      const span = ranges[at]?.spans[name];
      return span ? `${words} (${spanText(name, span)})` : words;
    });
    // What both have alike, because it was set so or is, is no question.
    if (said.length > 1 && said[0] === said[1]) return [];
    const caption = between.length === 1 ? `${between[0]}.` : `Above ${between[0]}, below ${between[1]}.`;
    const because = new Set(ranges.flatMap(({ spans, because }) => (spans[name] ? because : [])));
    return [
      {
        question: said.length === 1 ? alone : two,
        caption: [caption, ...because].join(' '),
        withheld: [name, ...(withheldWith[name] ?? [])],
      },
    ];
  });
}

/** What is said where {@link demonstration} has no question: two that are alike in all that is asked, or one without a picture. */
export function withoutQuestions(chains: readonly BuiltChain[]): string {
  const haveAll = chains.length > 1 && chains.every((chain) => demonstration([chain]).length > 0);
  if (haveAll) return 'The two chains are alike. Change one.';
  return 'There is no picture to ask about.';
}
