import { createSignal } from 'solid-js';
import type { Settings } from '../../machine/schema';
import { useRecords } from '../desk/context';
import say from './words/en';

/** Black on white, thicker lines: one tap away on every screen, and back to what was set before. */
export function Sunlight() {
  const records = useRecords();
  const theme = () => records.settings().theme;
  const isOn = () => theme() === 'contrast';
  const [before, setBefore] = createSignal<Settings['theme']>('system');
  const toggle = () => {
    if (!isOn()) setBefore(theme());
    void records.changeSettings({ theme: isOn() ? before() : 'contrast' });
  };
  return (
    <button type="button" class="sunlight" aria-pressed={isOn()} aria-label={say.head.sunlight} onClick={toggle}>
      <svg viewBox="0 0 26 26" aria-hidden="true">
        <circle cx="13" cy="13" r="5" />
        <path d="M13 1 v4 M13 21 v4 M1 13 h4 M21 13 h4 M4.5 4.5 l2.8 2.8 M18.7 18.7 l2.8 2.8 M4.5 21.5 l2.8 -2.8 M18.7 7.3 l2.8 -2.8" />
      </svg>
    </button>
  );
}
