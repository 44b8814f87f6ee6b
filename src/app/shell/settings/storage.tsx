import { createResource, createSignal, For, Show } from 'solid-js';
import type { Unreadable } from '../../../machine/aside';
import { useRecords } from '../../desk/context';
import { ExportReminder } from '../../files/export-reminder';
import { askToPersist, lasting, room, type Lasting } from '../../desk/persist';

const LASTING: Readonly<Record<Lasting, string>> = {
  yes: 'The browser has promised not to clear it by itself.',
  'may be cleared':
    'The browser may clear it when the device runs short of room. Save to a file what you cannot measure again.',
  'not known':
    'This browser does not say whether it clears such pages when room runs short. Save to a file now and then.',
};

const MB = 1e6;
const inMb = (bytes: number): string =>
  bytes < 0.1 * MB ? 'less than 0.1' : (bytes / MB).toFixed(bytes < 10 * MB ? 1 : 0);

function saveFile(item: Unreadable): void {
  const address = URL.createObjectURL(new Blob([JSON.stringify(item, null, 2)], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = `unreadable-${item.key.replaceAll(/[^A-Za-z0-9-]+/g, '-')}.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** Where the person's records are, how safe they are there, and what is not being kept and why. */
export function StorageStatus() {
  const records = useRecords();
  const [safe, { mutate: setSafe }] = createResource(lasting);
  const [space] = createResource(
    () => ({ tick: records.readingsTick() }),
    () => room(),
  );
  const [asked, setAsked] = createSignal(false);
  const ask = async () => {
    setSafe(await askToPersist());
    setAsked(true);
  };
  return (
    <section class="section">
      <h2>On this device</h2>
      <Show when={records.keeping()} fallback={<p class="problem">{records.problem()}</p>}>
        <p>Everything you keep stays in this browser on this device. Nothing is sent anywhere.</p>
        <Show when={safe.latest}>{(now) => <p>{LASTING[now()]}</p>}</Show>
        <Show when={safe.latest === 'may be cleared'}>
          <Show
            when={!asked()}
            fallback={
              <p class="faint" role="status">
                It did not promise. Browsers do so rather for pages that are used often or put on the home screen.
              </p>
            }
          >
            <button type="button" class="button" onClick={() => void ask()}>
              Ask the browser not to clear it
            </button>
          </Show>
        </Show>
        <Show when={space.latest}>
          {(now) => (
            <p>
              Room used: {inMb(now().used)} MB, the app itself included; free: {inMb(now().free)} MB.
            </p>
          )}
        </Show>
      </Show>
      <p>
        {records.worksOffline()
          ? 'Ready to work without a signal.'
          : 'Not yet ready to work without a signal: open the page once more while online.'}
      </p>
      <ExportReminder />
      <SetAside />
    </section>
  );
}

/** Records that could not be read: to save, and to forget when the person says so. */
function SetAside() {
  const records = useRecords();
  // Again after one was forgotten or put back.
  const [aside] = createResource(
    () => ({ undo: records.undo() }),
    () => records.listAside(),
  );
  return (
    <Show when={(aside.latest?.length ?? 0) > 0}>
      <h3>Set aside</h3>
      <p>These records could not be read. They are kept as they were found and nothing has been written over them.</p>
      <ul>
        <For each={aside.latest}>
          {(item) => (
            <li>
              <p>
                <code>{item.key}</code>: {item.reason}
              </p>
              <div class="row">
                <button type="button" class="button" onClick={() => saveFile(item)}>
                  Save it to a file
                </button>
                <button type="button" class="button" onClick={() => void records.discard(item)}>
                  Forget it
                </button>
              </div>
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}
