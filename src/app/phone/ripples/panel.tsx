import { createMemo, createSignal } from 'solid-js';
import type { OpenPicture } from '../../../instrument/picture';
import { formatMeasured } from '../../../quantity/format';
import { speed } from '../../../quantity/kinds';
import type { RippleFinding } from '../../../signal/ripple';
import { useRecords } from '../../desk/context';
import type { PanelProps } from '../panel';
import { Asking } from '../photo/asking';
import { createLooking, type Seek } from '../photo/looking';
import { createMarking } from '../photo/marking';
import { PhotoPanel } from '../photo/panel';
import { MarkedPicture } from '../photo/picture';
import { TextLine } from '../photo/text-line';
import { RipplesHow } from './how';
import { RipplesResult } from './result';
import { readSpeed, takenForSpeed } from './speed';
import say from './words/en';

const STANDARDS = ['rule', 'jaws'] as const;

const seekIn =
  (picture: OpenPicture): Seek<RippleFinding> =>
  ({ strip, scale }, stop, tell) =>
    picture.ripples(strip, scale, stop, tell);

/** The spacing of the ripples beside a corner, from a photo, and at which frequency that rings. */
export function RipplesPanel(props: PanelProps) {
  const records = useRecords();
  const [text, setText] = createSignal('');
  const kept = () => records.current()?.values['print.speed'];
  const typed = createMemo(() => readSpeed(text(), kept(), props.mark));
  const problem = () => ((read) => (read.ok || read.blank ? undefined : read.reason))(typed());
  const hint = () => {
    const one = kept();
    const { unit } = speed.mm_s;
    return one
      ? say.speed.machines(formatMeasured(one.value, one.half, unit, { mark: props.mark }))
      : say.speed.in(unit.label);
  };
  return (
    <PhotoPanel title={say.how.title} How={RipplesHow}>
      {(opened) => {
        const marking = createMarking(opened);
        const looking = createLooking(seekIn(opened), marking.marks, () => props.mark);
        return (
          <>
            <MarkedPicture picture={opened} marking={marking} hints={say.hints} lines={[]} />
            <div>
              <TextLine
                label={say.speed.label}
                text={text()}
                placeholder={hint()}
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
      }}
    </PhotoPanel>
  );
}
