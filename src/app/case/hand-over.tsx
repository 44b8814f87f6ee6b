import { createMemo, Show } from 'solid-js';
import { A } from '@solidjs/router';
import { caseAddress, encodeCase } from '../../diagnosis/link';
import type { Case, Machine } from '../../machine/schema';
import { SaveFile } from '../files/out';
import { LinkKeys } from '../desk/link-keys';
import say from './words/en';
import { useRecords } from '../desk/context';

/** The case for someone else: on paper, as a link, as a file. */
export function CaseHandOver(props: { case: Case; machine: Machine; title: string }) {
  const records = useRecords();
  const address = createMemo(() => {
    const { closed } = props.case;
    const letter = { ...props.case, machine: props.machine.name, closed };
    return caseAddress(window.location.href, encodeCase(letter));
  });
  return (
    <>
      <Show when={props.case.closed === null}>
        <A class="button case-wide" href={`/case/${props.case.machine}/${props.case.id}/sheet`}>
          {say.sheet.link}
        </A>
      </Show>
      <p class="section">{say.handOver.link}</p>
      <LinkKeys address={address()} title={props.title} />
      <p>{say.handOver.file}</p>
      <SaveFile store={records.store} machine={props.machine} />
    </>
  );
}
