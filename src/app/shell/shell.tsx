import { createSignal, Show, type ParentProps } from 'solid-js';
import { A, useLocation } from '@solidjs/router';
import { useRecords } from '../desk/context';
import { UndoNotice } from './undo-notice';

/** Running head, notices, and the screen between them. */
export function Shell(props: ParentProps) {
  const records = useRecords();
  const location = useLocation();
  const [later, setLater] = createSignal(false);
  const at = (start: string) => (location.pathname.startsWith(start) ? 'page' : undefined);
  return (
    <div class="page">
      <header class="running-head no-print">
        <A href="/" aria-label="Trammel: all checks">
          <span class="running-title">Trammel</span>
        </A>
        <nav aria-label="Main">
          <A href="/machines" aria-current={at('/machines')}>
            Machines
          </A>
          <A href="/settings" aria-current={at('/settings')}>
            Settings
          </A>
        </nav>
      </header>
      <Show when={records.update() && !later()}>
        <div class="notice row" role="status">
          <span>A new version is ready. What you have typed is kept.</span>
          <button type="button" class="button" onClick={() => void records.update()?.()}>
            Change over now
          </button>
          <button type="button" class="button button-plain" onClick={() => setLater(true)}>
            Later
          </button>
        </div>
      </Show>
      <Show when={records.ready() && !records.keeping()}>
        <div class="notice" role="alert">
          {records.problem()}
        </div>
      </Show>
      <Show when={records.trouble()}>
        <div class="notice row" role="alert">
          <span>{records.trouble()}</span>
          <button type="button" class="button" onClick={() => records.forgetTrouble()}>
            Understood
          </button>
        </div>
      </Show>
      <UndoNotice />
      {props.children}
    </div>
  );
}
