/** How many presses to go on, a digit of the step to jump to, or what else to do. */
export type StageCommand =
  | { readonly kind: 'go'; readonly by: number }
  | { readonly kind: 'digit'; readonly digit: string }
  | { readonly kind: 'enter' | 'blank' | 'leave' | 'full-screen' }
  /** Presses what the figure has to be pressed: what makes it run, what gives more of it. */
  | { readonly kind: 'press'; readonly what: 'run' | 'more' };

const go = (by: number): StageCommand => ({ kind: 'go', by });

/** Keys of the keyboard and of hand clickers, which send Page Up, Page Down, the full stop and sometimes Escape. */
const commands: Readonly<Record<string, StageCommand>> = {
  ArrowRight: go(1),
  ArrowDown: go(1),
  PageDown: go(1),
  ' ': go(1),
  Enter: { kind: 'enter' },
  ArrowLeft: go(-1),
  ArrowUp: go(-1),
  PageUp: go(-1),
  Home: go(-Infinity),
  End: go(Infinity),
  b: { kind: 'blank' },
  B: { kind: 'blank' },
  '.': { kind: 'blank' },
  f: { kind: 'full-screen' },
  F: { kind: 'full-screen' },
  Escape: { kind: 'leave' },
  r: { kind: 'press', what: 'run' },
  R: { kind: 'press', what: 'run' },
  m: { kind: 'press', what: 'more' },
  M: { kind: 'press', what: 'more' },
};

/**
 * What a key means while a lesson is projected; nothing while the reader holds a modifier. Arrows are left to a slider that was reached by
 * keyboard, Space and Enter to a button; all else means the same wherever the focus is. What takes text is out of reach.
 */
export function stageCommand({ key, ctrlKey, altKey, metaKey, target }: KeyboardEvent): StageCommand | undefined {
  if (ctrlKey || altKey || metaKey) return undefined;
  const focused = target as Element | null;
  if (key.startsWith('Arrow') && focused?.closest('[role=slider]')) return undefined;
  if ((key === ' ' || key === 'Enter') && focused?.closest('button, [role=button]')) return undefined;
  return /^\d$/.test(key) ? { kind: 'digit', digit: key } : commands[key];
}

/** Stops what runs in a figure of *stage*, if anything does. */
export function stopInFigure(stage: ParentNode): void {
  stage.querySelector<HTMLElement>('[data-does=run][aria-pressed=true]')?.click();
}

/** Presses what the figure that is projected has of that kind; nothing where it has none. */
export function pressInFigure(what: 'run' | 'more'): void {
  const all = [...document.querySelectorAll<HTMLElement>(`.stage [data-does=${what}]`)];
  all.find((button) => !button.closest('[inert]'))?.click();
}
