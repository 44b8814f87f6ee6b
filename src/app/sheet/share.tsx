import { createMemo, Show } from 'solid-js';
import type { Calculator } from '../../engine/calculator';
import { encodeLink, linkAddress } from '../../engine/link';
import type { Bench } from './bench';
import { LinkKeys } from '../desk/link-keys';

/** Hands the check on the bench to another phone. */
export function HandOver(props: { id: string; title: string; calculator: Calculator; bench: Bench }) {
  const encoded = createMemo(() => encodeLink(props.calculator, props.bench.evaluation(), props.bench.situation()));
  const address = createMemo(() => {
    const now = encoded();
    return now.ok ? linkAddress(window.location.href, props.id, now.query) : undefined;
  });
  const reason = () => {
    const now = encoded();
    return now.ok ? undefined : now.reason;
  };
  return (
    <div>
      <p>
        The link opens this check with these numbers on another phone, which needs no machine for it. The numbers stand
        in the link itself: no server gets them.
      </p>
      <Show when={reason()}>{(sentence) => <p class="problem">{sentence()}</p>}</Show>
      <Show when={address()}>{(link) => <LinkKeys address={link()} title={props.title} />}</Show>
    </div>
  );
}
