import type { Settings } from '../../../machine/schema';

/** Puts the chosen theme on the page; `system` leaves it to the device. */
export function applyTheme(theme: Settings['theme']): void {
  const root = document.documentElement;
  if (theme === 'system') delete root.dataset.theme;
  else root.dataset.theme = theme;
}
