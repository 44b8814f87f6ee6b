import { createSignal, Show } from 'solid-js';
import { fetchPart, NotFetched } from './parts/fetch-part';
import type { Code } from './qr';
import say from './words/en';
import './share.css';

/** A link to copy or send, or as a code to photograph. */
export function LinkKeys(props: { address: string; title: string }) {
  const [told, setTold] = createSignal<{ readonly sentence: string; readonly of: string }>();
  const [drawn, setDrawn] = createSignal<{ readonly code: Code; readonly quiet: number }>();
  let sheet: HTMLDialogElement | undefined;
  let lost: NotFetched | undefined;

  const tell = (sentence: string) => setTold({ sentence, of: props.address });
  const copy = async (text: string) => {
    try {
      await navigator.clipboard.writeText(text);
      tell(say.link.copied);
    } catch {
      tell(say.link.notCopied);
    }
  };
  const send = async (url: string) => {
    try {
      await navigator.share({ title: props.title, url });
      setTold(undefined);
    } catch (error) {
      // Closing the sheet of apps without picking one is no failure.
      if (error instanceof DOMException && error.name === 'AbortError') return;
      tell(say.link.notSent);
    }
  };
  const show = async (text: string) => {
    try {
      await lost?.again();
      const { drawCode, QUIET_ZONE } = await fetchPart(() => import('./qr'));
      const code = drawCode(text);
      if (!code) {
        tell(say.link.tooLong);
        return;
      }
      setDrawn({ code, quiet: QUIET_ZONE });
      sheet?.showModal();
    } catch (error) {
      if (error instanceof NotFetched) lost = error;
      tell(say.link.noDrawer);
    }
  };

  return (
    <>
      <label>
        {say.link.label}
        <input
          class="text-input"
          type="text"
          readonly
          value={props.address}
          onFocus={(event) => event.currentTarget.select()}
        />
      </label>
      <div class="row section no-print">
        <button type="button" class="button" onClick={() => void copy(props.address)}>
          {say.link.copy}
        </button>
        <Show when={'share' in navigator}>
          <button type="button" class="button" onClick={() => void send(props.address)}>
            {say.link.send}
          </button>
        </Show>
        <button type="button" class="button" onClick={() => void show(props.address)}>
          {say.link.show}
        </button>
      </div>
      <p role="status" class="small">
        {told()?.of === props.address ? told()?.sentence : ''}
      </p>
      <dialog ref={sheet} class="code-sheet" aria-label={say.link.sheet} onClose={() => setDrawn(undefined)}>
        <Show when={drawn()}>{(now) => <Picture code={now().code} quiet={now().quiet} />}</Show>
        <div class="row">
          <span class="small">{say.link.hold}</span>
          <button type="button" class="button" onClick={() => sheet?.close()}>
            {say.link.close}
          </button>
        </div>
      </dialog>
    </>
  );
}

/** Black on white whatever the theme: many readers see no light code on dark. */
function Picture(props: { code: Code; quiet: number }) {
  const side = () => props.code.size + 2 * props.quiet;
  return (
    <svg
      class="code"
      viewBox={`${-props.quiet} ${-props.quiet} ${side()} ${side()}`}
      role="img"
      aria-label={say.link.code}
      shape-rendering="crispEdges"
    >
      <rect x={-props.quiet} y={-props.quiet} width={side()} height={side()} fill="#fff" />
      <path d={props.code.path} fill="#000" />
    </svg>
  );
}
