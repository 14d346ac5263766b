import type { FormulaLine } from '#site/state/formula-line.ts';
import type { StepEquation } from './families.ts';

/** An equation in letters, and with places for its numbers. */
type Pair = readonly [letters: string, numbers: string];

async function pairOf(equation: StepEquation): Promise<Pair | undefined> {
  if (equation === null || typeof equation !== 'string') return equation ?? undefined;
  const { equations } = await import('virtual:equations');
  return equations[equation];
}

/**
 * Puts the equation of a step into *place*, in letters and below them with its numbers; lines are told how wide their numbers make them, so that type can
 * follow the column, on paper too. Words stand there where the network does not give it.
 */
export async function showStep(place: HTMLElement, equation: StepEquation, line: FormulaLine): Promise<void> {
  try {
    const pair = await pairOf(equation);
    if (!pair) return;
    const [letters, numbers] = [row(pair[0]), row(pair[1])];
    place.replaceChildren(letters);
    if (!('texts' in line)) return;
    let wider = 0;
    for (const slot of numbers.querySelectorAll<HTMLElement>('[data-number]')) {
      const text = line.texts[slot.dataset['number']!] ?? '';
      slot.textContent = text;
      if (slot.closest('.katex-html')) wider += digit * (text.length - 1);
    }
    const display = numbers.querySelector<HTMLElement>('.katex-display');
    const ems = Number(display?.style.getPropertyValue('--ems'));
    display?.style.setProperty('--ems', (ems + wider).toFixed(1));
    place.append(numbers);
  } catch {
    place.textContent = 'The equation could not be fetched; it stands in the lesson.';
  }
}

function row(html: string): HTMLElement {
  const made = document.createElement('div');
  made.innerHTML = html;
  return made;
}

/** Width of a digit, em: a little more than the text face has it. */
const digit = 0.62;
