import { Index, Show } from 'solid-js';
import say from './words/en';

export interface Share {
  readonly name: string;
  /** 0 to 1. */
  readonly share: number;
}

/** One formula: meaning, typeset with symbols, the same with numbers, the result or why there is none, the source. */
export function Working(props: {
  meaning: string;
  result: string;
  reason: string | undefined;
  symbolic: string;
  filled: string | undefined;
  source: string;
  method: string;
  shares: readonly Share[];
}) {
  return (
    <div class="working">
      <div class="working-head">
        <h3>{props.meaning}</h3>
        <span class="working-result">{props.result}</span>
      </div>
      {/* MathML of our own tree, escaped where it is made. Focusable, because a long one scrolls sideways. */}
      <div class="working-formula" role="group" aria-label={say.working.formula(props.meaning)} tabindex="0">
        <div innerHTML={props.symbolic} />
        <Show when={props.filled}>{(filled) => <div innerHTML={filled()} />}</Show>
      </div>
      <Show when={props.reason}>
        <p class="faint small">{props.reason}</p>
      </Show>
      <Show when={props.shares.length > 0}>
        <p class="small faint">{props.method}</p>
        <Shares shares={props.shares} />
      </Show>
      <p class="small faint">{props.source}</p>
    </div>
  );
}

/** The uncertainty budget as bars: which input contributes how much. */
function Shares(props: { shares: readonly Share[] }) {
  return (
    <div>
      <Index each={props.shares}>
        {(part) => (
          <div class="share">
            <span>{part().name}</span>
            <svg viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true">
              <rect class="d-shade" x="0" y="1" width="100" height="10" />
              <rect class="d-solid" x="0" y="1" width={Math.max(part().share * 100, 0.5)} height="10" />
            </svg>
            <span>{say.working.share(Math.round(part().share * 100))}</span>
          </div>
        )}
      </Index>
    </div>
  );
}
