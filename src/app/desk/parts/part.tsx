import {
  createComponent,
  createEffect,
  createSignal,
  ErrorBoundary,
  Show,
  untrack,
  type Component,
  type JSX,
} from 'solid-js';
import { A, useLocation } from '@solidjs/router';
import { keepAll } from '../behind';
import { fetchPart, NotFetched, pageCanBeHad } from './fetch-part';
import say from './words/en';

/** In place of a part that did not come, or that failed: what happened, and a key that tries again. */
export function Trouble(props: { what: string; error: unknown; onMended: () => void }) {
  const location = useLocation();
  const [state, setState] = createSignal<'failed' | 'trying' | 'still'>('failed');
  // Whoever goes elsewhere takes no trouble along.
  createEffect<string | undefined>((before) => {
    const at = location.pathname;
    if (before !== undefined && before !== at) props.onMended();
    return at;
  }, undefined);
  const again = async (error: unknown): Promise<void> => {
    setState('trying');
    try {
      if (error instanceof NotFetched) await error.again();
      props.onMended();
    } catch {
      // Some browsers keep a failure for as long as the page lives; what was typed is kept.
      if ((await pageCanBeHad()) && (await keepAll())) window.location.reload();
      else setState('still');
    }
  };
  return (
    <div class="notice" role="alert">
      <p>{props.error instanceof NotFetched ? say.lost(props.what) : say.failed(props.what, String(props.error))}</p>
      <Show when={state() === 'still'}>
        <p>{say.still}</p>
      </Show>
      <div class="row">
        <button type="button" class="button" disabled={state() === 'trying'} onClick={() => void again(props.error)}>
          {state() === 'trying' ? say.trying : say.again}
        </button>
        <A class="button" href="/">
          {say.all}
        </A>
      </div>
    </div>
  );
}

/** What is being waited for: said once it takes more than a moment. */
export function Waiting(props: { what: string }) {
  return (
    <p class="waiting" role="status">
      {say.fetching(props.what)} <span class="waiting-long">{say.slow}</span>
    </p>
  );
}

type Frame = (props: { children: JSX.Element }) => JSX.Element;

const bare: Frame = (props) => <>{props.children}</>;
const asMain: Frame = (props) => <main>{props.children}</main>;

/** Keeps the failure of what stands in it from everything else on the page. */
export function Boundary(props: { what: string; frame?: Frame; children: JSX.Element }) {
  return (
    <ErrorBoundary
      fallback={(error: unknown, reset) => {
        const trouble = <Trouble what={props.what} error={error} onMended={reset} />;
        return untrack(() => (props.frame ?? bare)({ children: trouble }));
      }}
    >
      {props.children}
    </ErrorBoundary>
  );
}

/**
 * A component that is fetched when it is first shown. Meanwhile it says what it waits for; where it does not come, or fails,
 * it says so and can be tried again, and nothing else on the page is touched.
 * @param what it is called in a sentence: "the settings"
 */
export function part<P extends object>(
  load: () => Promise<Component<P>>,
  what: string,
  Frame: Frame = bare,
): Component<P> {
  const [found, setFound] = createSignal<Component<P>>();
  return (props: P) => {
    const [error, setError] = createSignal<NotFetched>();
    const ask = (): void => {
      setError(undefined);
      fetchPart(load).then(
        (component) => setFound(() => component),
        (reason: unknown) => setError(reason instanceof NotFetched ? reason : undefined),
      );
    };
    if (!untrack(found)) ask();
    const meanwhile = () => (
      <Frame>
        <Show when={error()} keyed fallback={<Waiting what={what} />}>
          {(reason) => <Trouble what={what} error={reason} onMended={ask} />}
        </Show>
      </Frame>
    );
    return (
      <Boundary what={what} frame={Frame}>
        <Show when={found()} fallback={meanwhile()}>
          {(component) => createComponent(component(), props)}
        </Show>
      </Boundary>
    );
  };
}

/** `part` for a whole screen. */
export const screen = (load: () => Promise<Component>, what: string): Component => part(load, what, asMain);
