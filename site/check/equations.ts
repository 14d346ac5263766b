import type { FormulaLine } from '#site/state/formula-line.ts';

/**
 * Puts an equation into *place*, in letters and below them with its numbers. They are fetched with the first: where that fails, or there are no
 * numbers, the words beside it stand alone.
 */
export async function showEquation(place: HTMLElement, id: string, line: FormulaLine): Promise<void> {
  try {
    const { equations } = await import('virtual:equations');
    const [letters, numbers] = equations[id] ?? [];
    if (letters === undefined || numbers === undefined) return;
    place.innerHTML = letters;
    if (!('texts' in line)) return;
    const below = document.createElement('div');
    below.innerHTML = numbers;
    for (const slot of below.querySelectorAll<HTMLElement>('[data-number]')) {
      slot.textContent = line.texts[slot.dataset['number']!] ?? '';
    }
    place.append(below);
  } catch {
    place.textContent = 'The equation could not be fetched.';
  }
}
