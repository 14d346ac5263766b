/** How many steps to go on, or what else to do. */
export type StageCommand = number | 'blank' | 'leave';

/** Keys of the keyboard and of hand clickers, which send Page Up, Page Down, the full stop and sometimes Escape. */
const commands: Readonly<Record<string, StageCommand>> = {
  ArrowRight: 1,
  ArrowDown: 1,
  PageDown: 1,
  ArrowLeft: -1,
  ArrowUp: -1,
  PageUp: -1,
  Home: -Infinity,
  End: Infinity,
  b: 'blank',
  B: 'blank',
  '.': 'blank',
  Escape: 'leave',
};

/**
 * What a key means while a lesson is projected; nothing while the reader holds a modifier. A clicker's keys always mean the
 * same; arrows, Home and End are left to a slider that has the focus. What takes text is out of reach.
 */
export function stageCommand({ key, ctrlKey, altKey, metaKey }: KeyboardEvent): StageCommand | undefined {
  const isSliders = /^(Arrow|Home|End)/.test(key) && document.activeElement?.closest('[role=slider]');
  return ctrlKey || altKey || metaKey || isSliders ? undefined : commands[key];
}
