import { createSignal, onCleanup, onMount, Show, type ParentProps } from 'solid-js';
import { A, useLocation } from '@solidjs/router';
import { useRecords } from '../desk/context';
import { NotFetched } from '../desk/parts/fetch-part';
import { Boundary, part, Trouble } from '../desk/parts/part';
import { Sunlight } from './sunlight';
import { UndoNotice } from './undo-notice';
import { Wordmark } from './wordmark';
import say from './words/en';

const News = part(async () => (await import('./news')).News, say.parts.news);

/** Running head, notices, and the screen between them. */
export function Shell(props: ParentProps) {
  const records = useRecords();
  const location = useLocation();
  const [later, setLater] = createSignal(false);
  const [lost, setLost] = createSignal<NotFetched>();
  // What was fetched for a key that was pressed, and stands in no boundary of its own.
  const hear = ({ reason }: PromiseRejectionEvent): void => {
    if (reason instanceof NotFetched) setLost(reason);
  };
  onMount(() => addEventListener('unhandledrejection', hear));
  onCleanup(() => removeEventListener('unhandledrejection', hear));
  // Whoever has kept nothing yet finds nothing new.
  const hasNews = () =>
    records.ready() && records.machines().length > 0 && records.settings().seenVersion !== __TRAMMEL_VERSION__;
  const at = (start: string) => (location.pathname.startsWith(start) ? 'page' : undefined);
  return (
    <div class="page">
      <header class="running-head no-print">
        <A href="/" aria-label={say.head.home}>
          <Wordmark />
        </A>
        <nav aria-label={say.head.main}>
          <A href="/machines" aria-current={at('/machines')}>
            {say.head.machines}
          </A>
          <A href="/settings" aria-current={at('/settings')}>
            {say.head.settings}
          </A>
          <Sunlight />
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
      <Show when={lost()} keyed>
        {(error) => <Trouble what={say.parts.some} error={error} onMended={() => setLost(undefined)} />}
      </Show>
      <UndoNotice />
      <Boundary what={say.parts.screen}>{props.children}</Boundary>
    </div>
  );
}
