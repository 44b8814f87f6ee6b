import { createMemo, createSignal } from 'solid-js';
import type { OpenPicture } from '../../../instrument/picture';
import { formatMeasured } from '../../../quantity/format';
import { speed } from '../../../quantity/kinds';
import { useRecords } from '../../desk/context';
import type { PanelProps } from '../panel';
import { Asking } from '../photo/asking';
import { createLooking } from '../photo/looking';
import { createMarking } from '../photo/marking';
import { PhotoPanel } from '../photo/panel';
import { MarkedPicture } from '../photo/picture';
import { TextLine } from '../photo/text-line';
import { RipplesHow } from './how';
import { RipplesResult } from './result';
import { readSpeed, takenForSpeed } from './speed';
import say from './words/en';

/** The spacing of the ripples beside an edge, from a photo, and at which frequency that rings. */
export function RipplesPanel(props: PanelProps) {
  return (
    <PhotoPanel title={say.how.title} How={RipplesHow}>
      {(opened) => <Opened {...props} picture={opened} />}
    </PhotoPanel>
  );
}

const STANDARDS = ['rule', 'jaws'] as const;

function Opened(props: PanelProps & { picture: OpenPicture }) {
  const records = useRecords();
  const [text, setText] = createSignal('');
  const kept = () => records.current()?.values['print.speed'];
  const typed = createMemo(() => readSpeed(text(), kept(), props.mark));
  const problem = () => ((read) => (read.ok || read.blank ? undefined : read.reason))(typed());
  const machines = () =>
    ((one) =>
      one
        ? say.speed.machines(formatMeasured(one.value, one.half, speed.mm_s.unit, { mark: props.mark }))
        : say.speed.in(speed.mm_s.unit.label))(kept());
  const marking = createMarking(props.picture);
  const looking = createLooking(
    ({ strip, scale }, stop, tell) => props.picture.ripples(strip, scale, stop, tell),
    marking.marks,
    () => props.mark,
  );
  return (
    <>
      <MarkedPicture picture={props.picture} marking={marking} hints={say.hints} lines={[]} />
      <div>
        <TextLine
          label={say.speed.label}
          text={text()}
          placeholder={machines()}
          problem={problem()}
          decimal
          onText={setText}
        />
        <p class="field-hint">{takenForSpeed(props.mark)}</p>
        <Asking looking={looking} mark={props.mark} label={say.looking} standards={STANDARDS}>
          {(found) => (
            <RipplesResult
              finding={found.finding}
              speed={typed()}
              stale={looking.isStale()}
              unit={looking.scale.unit()}
              mark={props.mark}
              take={props.take}
              onTake={(taken) => props.onTake(taken)}
            />
          )}
        </Asking>
      </div>
    </>
  );
}
