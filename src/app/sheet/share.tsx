import { createMemo, Show } from 'solid-js';
import { encodeLink, linkAddress } from '../../engine/link';
import { LinkKeys } from '../desk/link-keys';
import type { Sheet } from './open-sheet';
import say from './words/en';

/** Hands the check on the bench to another phone, or to paper. */
export function HandOver(props: { sheet: Sheet }) {
  const encoded = createMemo(() =>
    encodeLink(props.sheet.calculator, props.sheet.bench.evaluation(), props.sheet.bench.situation()),
  );
  const address = createMemo(() => {
    const now = encoded();
    return now.ok ? linkAddress(window.location.href, props.sheet.id, now.query) : undefined;
  });
  const reason = () => {
    const now = encoded();
    return now.ok ? undefined : now.reason;
  };
  return (
    <>
      <div>
        <p>{say.share.what}</p>
        <Show when={reason()}>{(sentence) => <p class="problem">{sentence()}</p>}</Show>
        <Show when={address()}>{(link) => <LinkKeys address={link()} title={props.sheet.title} />}</Show>
      </div>
      <p class="section">{say.share.onPaper}</p>
      <button type="button" class="button" onClick={() => window.print()}>
        {say.share.print}
      </button>
    </>
  );
}
