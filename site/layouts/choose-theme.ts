import { isTheme, theme } from '#site/state/preferences.ts';

/** Lets the reader choose light, dark or the system's colours, and remembers it. */
export function chooseTheme(): void {
  const select = document.querySelector<HTMLSelectElement>('[data-theme-choice]')!;
  const notices = document.querySelector<HTMLElement>('[data-theme-notice]')!;
  const { value, notice = '' } = theme.read();
  select.value = value;
  notices.textContent = notice;
  select.addEventListener('change', () => {
    if (!isTheme(select.value)) return;
    theme.write(select.value);
    notices.textContent = '';
    if (select.value === 'system') delete document.documentElement.dataset['theme'];
    else document.documentElement.dataset['theme'] = select.value;
  });
}
