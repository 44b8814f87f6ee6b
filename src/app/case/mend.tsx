import { createSignal, For, Show, type ParentProps } from 'solid-js';
import { A } from '@solidjs/router';
import { listed } from '../../engine/list';
import { catalogue } from '../../diagnosis/catalogue';
import { causeOf } from '../../diagnosis/pick';
import type { CauseId } from '../../diagnosis/types';
import { Fold } from '../../ui/fold';
import { Cautions } from './cautions';
import type { NewEntry } from './edit';
import { RepairOrReplace } from './repair-or-replace';
import { minutesWords } from './said';
import { textsOfMend } from './texts-of';
import { money } from './worth';
import say from './words/en';
import { TermKeys } from '../desk/glossary/terms';
import { titleOf } from '../desk/reading-entry';

/** A mend, its replacement beside it, and whether it cured. */
export function CaseMend(props: ParentProps<{ cause: CauseId; onEntry: (entry: NewEntry) => void }>) {
  const cause = () => causeOf(catalogue, props.cause);
  const [replacing, setReplacing] = createSignal(false);
  const replacement = () => (replacing() ? cause().replace : undefined);
  const way = () => replacement() ?? cause().mend;
  const calculator = () => listed.find(({ id }) => id === cause().mend.calculator)?.id;
  const done = (cured: boolean) =>
    props.onEntry({ kind: 'mended', cause: props.cause, cured, remedy: replacement() ? 'replace' : 'mend' });
  return (
    <>
      <p class="case-kicker">
        {say.mend.kicker(minutesWords(way().minutes), way().cost > 0 ? money(way().cost) : undefined)}
      </p>
      <h2>{way().headline}</h2>
      <p>
        {say.mend.suspected(cause().title)} <span class="faint">{say.mend.part(cause().part)}</span>
      </p>
      <Cautions>
        <li>{say.mend.cold}</li>
        <li>{way().risk}</li>
      </Cautions>
      <ol>
        <For each={way().steps}>{(line) => <li>{line}</li>}</For>
      </ol>
      <TermKeys texts={textsOfMend(cause())} />
      <Show when={calculator()}>
        {(id) => (
          <A class="button case-wide" href={`/check/${id()}`}>
            {say.mend.amount(titleOf(id()))}
          </A>
        )}
      </Show>
      <h3 class="case-ask">{say.mend.ask}</h3>
      <p class="small">{say.mend.proof(cause().proof)}</p>
      <div class="case-keys case-two">
        <button type="button" class="button case-answer" onClick={() => done(true)}>
          {say.mend.cured}
        </button>
        <button type="button" class="button case-answer" onClick={() => done(false)}>
          {say.mend.not}
        </button>
      </div>
      <Show when={cause().replace}>
        <Fold title={say.ways.title} open>
          <RepairOrReplace cause={props.cause} />
          <button type="button" class="button" onClick={() => setReplacing(!replacing())}>
            {replacing() ? say.mend.repair : say.mend.replace}
          </button>
        </Fold>
      </Show>
      {props.children}
    </>
  );
}
