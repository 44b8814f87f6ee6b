import { createMemo, Show } from 'solid-js';
import { A } from '@solidjs/router';
import type { Danger } from '../../diagnosis/danger';
import { firstActs } from '../../diagnosis/stop';
import { tickLines, type Safety } from './safety';
import { SafetyKeys } from './safety-keys';
import { SheetKeys } from './sheet-keys';
import say from './words/en';
import { LinkKeys } from '../desk/link-keys';
import { FirstActs } from '../desk/stop';

/** What is said in the address of a complaint that is no case yet. */
export interface Said {
  readonly said: string;
  readonly who: string;
  readonly tick: Safety | undefined;
}

/** An address of this app for a complaint. @param page `stop` to be ticked by whoever gets it, `case/new` to go on with it */
export function complaintAddress(
  page: 'stop' | 'case/new',
  { said, who, tick }: Said,
  more: Record<string, string> = {},
): string {
  const query = new URLSearchParams({ ...more, said, who, ...(tick ? { tick } : {}) });
  return `/${page}?${query.toString()}`;
}

function whole(address: string): string {
  const url = new URL(window.location.href);
  url.search = '';
  url.hash = address;
  return url.href;
}

/** Stop: the first acts, what can be ticked, and the same as link, code or sheet for whoever stands beside the machine. */
export function StopGate(
  props: Said & {
    danger: Danger;
    /** On a page of its own, which can be printed. */
    paper?: boolean;
    onTick: (safety: Safety) => void;
  },
) {
  const acts = () => firstActs(props.danger.first);
  const text = createMemo(() =>
    [
      ...tickLines(acts()),
      ...(props.said === '' ? [] : [say.quote(props.said)]),
      ...(props.who === '' ? [] : [say.stop.asked(props.who)]),
      whole(complaintAddress('stop', props)),
    ].join('\n'),
  );
  /** Ticked, it goes back to whoever asked; before, to whoever is to tick. */
  const address = () => whole(complaintAddress(props.tick ? 'case/new' : 'stop', props));
  return (
    <>
      <FirstActs first={props.danger.first}>
        <SafetyKeys said={props.tick} onTick={(safety) => props.onTick(safety)} />
        <Show when={props.tick}>{(safety) => <p role="status">{say.stop.after[safety()]}</p>}</Show>
      </FirstActs>
      <section class="section">
        <h2>{props.tick ? say.stop.back : say.safe.send}</h2>
        <LinkKeys address={address()} title={acts().title} />
        <Show
          when={props.paper}
          fallback={
            <A class="button case-wide" href={complaintAddress('stop', props)}>
              {say.sheet.link}
            </A>
          }
        >
          <SheetKeys back={undefined} title={acts().title} text={text()} day={new Date().toISOString().slice(0, 10)} />
        </Show>
      </section>
    </>
  );
}
