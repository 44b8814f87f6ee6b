import { Show } from 'solid-js';
import { A } from '@solidjs/router';
import { catalogue } from '../../diagnosis/catalogue';
import { safetySaid } from '../../diagnosis/dangers';
import { causeOf } from '../../diagnosis/pick';
import type { CauseId, Dangers } from '../../diagnosis/types';
import type { Case } from '../../machine/schema';
import { Cautions } from './cautions';
import type { NewEntry } from './edit';
import say from './words/en';

const titles = (ids: readonly CauseId[]): readonly string[] => ids.map((id) => causeOf(catalogue, id).title);

/** A danger that nothing here can clear: without power, and to a qualified person. */
export function KeepUnplugged(props: { case: Case; dangers: Dangers; onEntry: (entry: NewEntry) => void }) {
  const words = say.askOther.unplugged;
  const cannot = () => safetySaid(props.case) === 'cannot';
  return (
    <>
      <p class="case-kicker">{say.askOther.kicker}</p>
      <h2>{words.title}</h2>
      <Cautions>
        <li>{words.how}</li>
      </Cautions>
      <Show when={cannot()}>
        <p>{words.cannot}</p>
      </Show>
      <Show when={props.dangers.unlisted}>
        <p>
          {words.unlisted} <A href={`/case/new?said=${encodeURIComponent(props.case.complaint)}`}>{say.fresh.title}</A>
        </p>
      </Show>
      <Show when={!cannot() && props.dangers.unseen.length > 0}>
        <p>
          {words.unseen(titles(props.dangers.unseen))} {words.freed}
        </p>
      </Show>
      <Show when={props.dangers.found.length > 0}>
        <p>{words.found(titles(props.dangers.found))}</p>
      </Show>
      <A class="button button-main case-wide" href={`/case/${props.case.machine}/${props.case.id}/sheet`}>
        {say.sheet.link}
      </A>
      <Show when={cannot()}>
        <button type="button" class="button case-wide" onClick={() => props.onEntry({ kind: 'made safe' })}>
          {words.done}
        </button>
      </Show>
    </>
  );
}
