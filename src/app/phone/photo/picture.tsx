import { Show } from 'solid-js';
import type { OpenPicture } from '../../../instrument/picture';
import type { Point } from '../../../signal/ridge-types';
import { ChoiceField } from '../../../ui/choice-field';
import { PictureKeys } from '../../../ui/picture-keys';
import { PictureView } from '../../../ui/picture-view';
import { scaleOf } from '../../../ui/view-transform';
import { GROUPS, type Group, type Marking } from './marking';
import type { HandleId } from './marks';
import { StripOver } from './over';
import say from './words/en';

/** What the arrows move, and how closely, where it is the strip or the scale. */
function Handles(props: { marking: Marking; group: Exclude<Group, 'picture'> }) {
  return (
    <>
      <ChoiceField
        label={say.marking.arrows}
        options={GROUPS[props.group].map((id) => ({ id, label: say.marking.handles[id] }))}
        value={props.marking.picked() ?? ''}
        onPick={(id) => props.marking.setPicked(id as HandleId)}
      />
      <p>
        <button type="button" class="button" onClick={() => props.marking.layHere(props.group)}>
          {props.group === 'strip' ? say.marking.layStrip : say.marking.bringMarks}
        </button>
      </p>
      <Show when={props.group === 'scale' && props.marking.marks()}>
        <p class="small">
          {say.marking.within(Math.round(props.marking.pointing()), scaleOf(props.marking.stage.view()) < 1)}
        </p>
      </Show>
    </>
  );
}

/** An open picture under the fingers, with the strip and the scale marks on it. */
export function MarkedPicture(props: {
  picture: OpenPicture;
  marking: Marking;
  /** What a hand is told of each group. */
  hints: Readonly<Record<Group, string>>;
  /** Lines found, drawn on it where they still hold, in picture pixels. */
  lines: readonly (readonly [Point, Point])[];
}) {
  const group = () => props.marking.group();
  const handled = () => ((now) => (now === 'picture' ? undefined : now))(group());
  return (
    <div>
      <ChoiceField
        label={say.marking.move}
        options={Object.entries(say.marking.groups).map(([id, label]) => ({ id, label }))}
        value={group()}
        onPick={(id) => props.marking.pickGroup(id as Group)}
      />
      <PictureView
        stage={props.marking.stage}
        bitmap={props.picture.preview}
        bitmapScale={props.picture.previewScale}
        handles={props.marking.handles()}
        picked={props.marking.picked()}
        onPick={(id) => props.marking.setPicked(id)}
        onHandle={(id, to) => props.marking.bring(id, to)}
        onNudge={(by) => props.marking.nudge(by)}
        label={say.marking.picture}
      >
        <Show when={props.marking.marks()}>
          {(now) => (
            <StripOver
              marks={now()}
              view={props.marking.stage.view()}
              named={group() !== 'scale'}
              lines={props.lines}
            />
          )}
        </Show>
      </PictureView>
      <PictureKeys stage={props.marking.stage} onNudge={(by) => props.marking.nudge(by)} />
      <p class="field-hint">{props.hints[group()]}</p>
      <Show when={handled()}>{(now) => <Handles marking={props.marking} group={now()} />}</Show>
      <Show when={props.picture.reduced > 1}>
        <p class="small">{say.marking.reduced}</p>
      </Show>
    </div>
  );
}
