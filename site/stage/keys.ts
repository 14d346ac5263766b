export type StageCommand = 'next' | 'back' | 'first' | 'last' | 'blank' | 'leave';

/** Keys of the keyboard and of hand clickers, which send Page Up, Page Down, the full stop and sometimes Escape. */
const commands: Readonly<Record<string, StageCommand>> = {
  ArrowRight: 'next',
  ArrowDown: 'next',
  PageDown: 'next',
  ArrowLeft: 'back',
  ArrowUp: 'back',
  PageUp: 'back',
  Home: 'first',
  End: 'last',
  b: 'blank',
  B: 'blank',
  '.': 'blank',
  Escape: 'leave',
};

/** What a key means while a lesson is projected; nothing while the reader types, moves a slider or holds a modifier. */
export function stageCommand(event: KeyboardEvent): StageCommand | undefined {
  if (event.ctrlKey || event.altKey || event.metaKey || event.defaultPrevented) return undefined;
  const target = event.target;
  const usesArrows = target instanceof Element && target.closest('input, select, textarea, [role=slider]') !== null;
  const command = commands[event.key];
  return usesArrows && command !== 'leave' && !event.key.startsWith('Page') ? undefined : command;
}
