import { createResource, createSignal, For, Show } from 'solid-js';
import type { Unreadable } from '../../../machine/aside';
import { useRecords } from '../../desk/context';
import { ExportReminder } from '../../files/export-reminder';
import { CopyStage } from '../../desk/copy-stage';
import { askToPersist, lasting, room } from '../../desk/persist';
import say from './words/en';

const MB = 1e6;
const inMb = (bytes: number): string =>
  bytes < 0.1 * MB
    ? say.storage.fewMegabytes('0.1')
    : say.storage.megabytes((bytes / MB).toFixed(bytes < 10 * MB ? 1 : 0));

function saveFile(item: Unreadable): void {
  const address = URL.createObjectURL(new Blob([JSON.stringify(item, null, 2)], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = say.aside.file(item.key.replaceAll(/[^A-Za-z0-9-]+/g, '-'));
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
      <h2>{say.storage.title}</h2>
      <Show when={records.keeping()} fallback={<p class="problem">{records.problem()}</p>}>
        <p>{say.storage.stays}</p>
        <Show when={safe.latest}>{(now) => <p>{say.storage.lasting[now()]}</p>}</Show>
        <Show when={safe.latest === 'may be cleared'}>
          <Show
            when={!asked()}
            fallback={
              <p class="faint" role="status">
                {say.storage.noPromise}
              </p>
            }
          >
            <button type="button" class="button" onClick={() => void ask()}>
              {say.storage.ask}
            </button>
          </Show>
        </Show>
        <Show when={space.latest}>{(now) => <p>{say.storage.room(inMb(now().used), inMb(now().free))}</p>}</Show>
      </Show>
      <Show when={!records.copyStage()} fallback={<CopyStage />}>
        <p>{records.worksOffline() ? say.storage.offline : say.storage.notYetOffline}</p>
      </Show>
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
      <h3>{say.aside.title}</h3>
      <p>{say.aside.kept}</p>
      <ul>
        <For each={aside.latest}>
          {(item) => (
            <li>
              <p>
                <code>{item.key}</code>: {item.reason}
              </p>
              <div class="row">
                <button type="button" class="button" onClick={() => saveFile(item)}>
                  {say.aside.save}
                </button>
                <button type="button" class="button" onClick={() => void records.discard(item)}>
                  {say.aside.forget}
                </button>
              </div>
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}
