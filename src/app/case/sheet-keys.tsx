import { createSignal, Show } from 'solid-js';
import { A } from '@solidjs/router';
import say from './words/en';

/** Prints the sheet, or sends, copies or saves it as text. */
export function SheetKeys(props: {
  /** Address of the case, where there is one to go back to. */
  back: string | undefined;
  title: string;
  text: string;
  /** Day the case was opened, as ISO 8601 writes it. */
  day: string;
}) {
  const [told, setTold] = createSignal('');
  const send = async () => {
    try {
      await navigator.share({ title: props.title, text: props.text });
      setTold('');
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return;
      setTold(say.sheet.notSent);
    }
  };
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(props.text);
      setTold(say.sheet.copied);
    } catch {
      setTold(say.sheet.notCopied);
    }
  };
  const save = () => {
    const address = URL.createObjectURL(new Blob([props.text], { type: 'text/plain' }));
    const link = document.createElement('a');
    link.href = address;
    link.download = say.sheet.file(props.day);
    link.click();
    setTimeout(() => URL.revokeObjectURL(address), 10_000);
  };
  return (
    <>
      <div class="row no-print">
        <Show when={props.back}>
          {(back) => (
            <A class="button" href={back()}>
              {say.back}
            </A>
          )}
        </Show>
        <button type="button" class="button button-main" onClick={() => window.print()}>
          {say.sheet.print}
        </button>
        <Show when={'share' in navigator}>
          <button type="button" class="button" onClick={() => void send()}>
            {say.sheet.send}
          </button>
        </Show>
        <button type="button" class="button" onClick={() => void copy()}>
          {say.sheet.copy}
        </button>
        <button type="button" class="button" onClick={save}>
          {say.sheet.save}
        </button>
      </div>
      <p role="status" class="small no-print">
        {told()}
      </p>
    </>
  );
}
