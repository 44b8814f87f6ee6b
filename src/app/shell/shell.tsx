import { createSignal, lazy, Show, type ParentProps } from 'solid-js';
import { A, useLocation } from '@solidjs/router';
import { useRecords } from '../desk/context';
import { UndoNotice } from './undo-notice';
import say from './words/en';

const News = lazy(() => import('./news'));

/** Running head, notices, and the screen between them. */
export function Shell(props: ParentProps) {
  const records = useRecords();
  const location = useLocation();
  const [later, setLater] = createSignal(false);
  // Whoever has kept nothing yet finds nothing new.
  const hasNews = () =>
    records.ready() && records.machines().length > 0 && records.settings().seenVersion !== __TRAMMEL_VERSION__;
  const at = (start: string) => (location.pathname.startsWith(start) ? 'page' : undefined);
  return (
    <div class="page">
      <header class="running-head no-print">
        <A href="/" aria-label={say.head.home}>
          <span class="running-title">{say.head.title}</span>
        </A>
        <nav aria-label={say.head.main}>
          <A href="/machines" aria-current={at('/machines')}>
            {say.head.machines}
          </A>
          <A href="/settings" aria-current={at('/settings')}>
            {say.head.settings}
          </A>
        </nav>
      </header>
      <Show when={records.update() && !later()}>
        <div class="notice row" role="status">
          <span>{say.update.ready}</span>
          <button type="button" class="button" onClick={() => void records.update()?.()}>
            {say.update.now}
          </button>
          <button type="button" class="button button-plain" onClick={() => setLater(true)}>
            {say.update.later}
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
            {say.trouble.understood}
          </button>
        </div>
      </Show>
      <Show when={hasNews()}>
        <News />
      </Show>
      <UndoNotice />
      {props.children}
    </div>
  );
}
