import { Show } from 'solid-js';
import { safetySaid } from '../../diagnosis/dangers';
import type { FirstAct, Hazard } from '../../diagnosis/types';
import type { Case, Machine } from '../../machine/schema';
import type { NewEntry } from './edit';
import { CaseHandOver } from './hand-over';
import { entryOf } from './safety';
import { SafetyKeys } from './safety-keys';
import say from './words/en';
import { FirstActs } from '../desk/stop';

/** Stands alone: until it is ticked as done the case shows no other step. It can be sent before anything is ticked. */
export function MakeSafe(props: {
  case: Case;
  machine: Machine;
  title: string;
  hazard: Hazard;
  first: FirstAct;
  onEntry: (entry: NewEntry) => void;
}) {
  return (
    <>
      <FirstActs first={props.first}>
        <p>
          {say.safe.hazard[props.hazard]} {say.safe.stop}
        </p>
        <Show when={safetySaid(props.case) === 'will do'}>
          <p role="status">
            <strong>{say.safe.waits}</strong>
          </p>
        </Show>
        <SafetyKeys said={safetySaid(props.case)} onTick={(safety) => props.onEntry(entryOf(safety))} />
      </FirstActs>
      <h3>{say.safe.send}</h3>
      <CaseHandOver case={props.case} machine={props.machine} title={props.title} />
    </>
  );
}
