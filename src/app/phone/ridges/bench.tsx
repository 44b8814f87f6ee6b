import { createEffect, createMemo, createSignal, on, onCleanup, Show } from 'solid-js';
import type { OpenPicture, Progress } from '../../../instrument/picture';
import { formatMeasured } from '../../../quantity/format';
import { length } from '../../../quantity/kinds';
import type { RidgeFinding, Strip } from '../../../signal/ridge-types';
import { ChoiceField } from '../../../ui/choice-field';
import { PictureKeys } from '../../../ui/picture-keys';
import { createStage } from '../../../ui/picture-stage';
import { PictureView } from '../../../ui/picture-view';
import { panned, scaleOf, toPicture, toScreen, type Spot } from '../../../ui/view-transform';
import { useRecords } from '../../desk/context';
import type { PanelProps } from '../panel-props';
import { handlePlace, marksInView, moveHandle, pointingAt, stripInView, type HandleId, type Marks } from './marks';
import { RidgesOver } from './over';
import { RidgesResult } from './result';
import { readDistance, readLayer, type ScaleEntry } from './scale';
import { ScaleForm } from './scale-form';
import { Task } from './task';
import { troubleWords } from './ridges-words';

const GROUPS = {
  picture: { label: 'the picture', handles: [] },
  strip: { label: 'the strip', handles: ['strip', 'end 1', 'end 2', 'width'] },
  scale: { label: 'the scale', handles: ['mark A', 'mark B'] },
} as const satisfies Record<string, { label: string; handles: readonly HandleId[] }>;
type Group = keyof typeof GROUPS;

const HANDLES: Readonly<Record<HandleId, { readonly sign: string; readonly label: string }>> = {
  strip: { sign: '✥', label: 'all of it' },
  'end 1': { sign: '1', label: 'end 1' },
  'end 2': { sign: '2', label: 'end 2' },
  width: { sign: '↔', label: 'its width' },
  'mark A': { sign: 'A', label: 'mark A' },
  'mark B': { sign: 'B', label: 'mark B' },
};

/** The picture moves further at a tap than a mark does. */
const PICTURE_STEP = 12;

/** An open picture: strip and scale marks set by hand, then the ridges looked for. */
export function RidgesBench(props: PanelProps & { picture: OpenPicture }) {
  const records = useRecords();
  // A picture is opened once and does not change; the panel is made anew for another.
  // eslint-disable-next-line solid/reactivity
  const picture = props.picture;
  const stage = createStage({ width: picture.width, height: picture.height });
  const [marks, setMarks] = createSignal<Marks>();
  const [group, setGroup] = createSignal<Group>('picture');
  const [picked, setPicked] = createSignal<HandleId>();
  const [entry, setEntry] = createSignal<ScaleEntry>({ standard: 'rule', text: '', layers: '', layer: '' });
  const [progress, setProgress] = createSignal<Progress>();
  const [trouble, setTrouble] = createSignal<string>();
  const [answer, setAnswer] = createSignal<{
    readonly finding: RidgeFinding;
    readonly strip: Strip;
    readonly to: unknown;
  }>();
  const [roomy, setRoomy] = createSignal(false);
  let running: AbortController | undefined;
  onCleanup(() => running?.abort());
  // The picture first, the form in a task of its own: on a slow phone both at once would hold up the fingers.
  const later = setTimeout(() => setRoomy(true));
  onCleanup(() => clearTimeout(later));

  createEffect(
    on(stage.size, (size) => {
      if (size && !marks()) setMarks(marksInView(stage.view(), size, stage.picture));
    }),
  );

  const unit = () => (records.settings().lengthUnit === 'in' ? length.in.unit : length.mm.unit);
  const keptLayer = () => records.current()?.values['print.layer'];
  const keptText = () => {
    const kept = keptLayer();
    return kept ? formatMeasured(kept.value, kept.half, unit(), { mark: props.mark }) : '';
  };
  const layer = createMemo(() => readLayer(entry().layer, keptLayer(), unit(), props.mark));
  const distance = createMemo(() => readDistance(entry(), keptLayer(), unit(), props.mark));
  /** What a finding answers: anew whenever something in it changes. */
  const question = createMemo(() => ({ marks: marks(), distance: distance(), layer: layer() }));
  /** What is still to be done before looking. */
  const wanting = () => {
    const unset = marks()?.scale.some((mark) => mark.pointing === undefined) ?? true;
    if (unset) return 'Set both scale marks, A and B, on the rule or whatever serves as the scale.';
    const read = distance();
    if (!read.ok) return read.blank ? 'Say what lies between the marks A and B.' : read.reason;
    const thin = layer();
    return thin.ok || thin.blank ? '' : thin.reason;
  };

  const handles = () => {
    const now = marks();
    if (!now) return [];
    return GROUPS[group()].handles.map((id) => ({ id, sign: HANDLES[id].sign, ...handlePlace(now, id) }));
  };
  const bring = (id: HandleId, to: Spot) =>
    setMarks((old) => old && moveHandle(old, id, to, stage.picture, pointingAt(stage.view(), picture.previewScale)));
  const nudge = (by: Spot) => {
    const id = picked();
    const now = marks();
    if (!id || !now) {
      stage.change((view) => panned(view, { x: by.x * PICTURE_STEP, y: by.y * PICTURE_STEP }));
      return;
    }
    const point = toScreen(stage.view(), handlePlace(now, id).at);
    bring(id, toPicture(stage.view(), { x: point.x + by.x, y: point.y + by.y }));
  };
  const pickGroup = (next: Group) => {
    setGroup(next);
    setPicked(GROUPS[next].handles[0]);
  };
  const stripHere = () => {
    const size = stage.size();
    if (size) setMarks((old) => old && { ...old, strip: stripInView(stage.view(), size, stage.picture) });
  };
  const marksHere = () => {
    const size = stage.size();
    if (size) setMarks((old) => old && { ...old, scale: marksInView(stage.view(), size, stage.picture).scale });
  };

  const look = async () => {
    const asked = question();
    if (!asked.marks || !asked.distance.ok) return;
    running?.abort();
    const stop = new AbortController();
    running = stop;
    setTrouble(undefined);
    setProgress({ part: 'sampling', done: 0 });
    const [a, b] = asked.marks.scale;
    const scale = {
      from: a.at,
      to: b.at,
      pointing: Math.max(a.pointing ?? 1, b.pointing ?? 1),
      ...asked.distance.value,
    };
    const options = asked.layer.ok ? { layer: asked.layer.value.value } : {};
    try {
      const finding = await picture.analyse(asked.marks.strip, scale, options, stop.signal, setProgress);
      if (running === stop) setAnswer({ finding, strip: asked.marks.strip, to: asked });
    } catch (error) {
      if (running === stop)
        setTrouble(troubleWords(error, 'Looking for the ridges was cancelled. The marks are as they were.'));
    } finally {
      if (running === stop) setProgress(undefined);
    }
  };
  const stale = () => answer()?.to !== question();

  return (
    <div class="measure-grid">
      <div>
        <ChoiceField
          label="Fingers and arrows move"
          options={Object.entries(GROUPS).map(([id, { label }]) => ({ id, label }))}
          value={group()}
          onPick={(id) => pickGroup(id as Group)}
        />
        <PictureView
          stage={stage}
          bitmap={picture.preview}
          bitmapScale={picture.previewScale}
          handles={handles()}
          picked={picked()}
          onPick={setPicked}
          onHandle={bring}
          onNudge={nudge}
          label="The picture with the strip and the scale marks"
        >
          <Show when={marks()}>
            {(now) => (
              <RidgesOver
                marks={now()}
                view={stage.view()}
                named={group() !== 'scale'}
                finding={stale() ? undefined : answer()?.finding}
              />
            )}
          </Show>
        </PictureView>
        <PictureKeys stage={stage} onNudge={nudge} />
        <p class="field-hint">{HINTS[group()]}</p>
        <Show when={group() !== 'picture'}>
          <ChoiceField
            label="The arrows move"
            options={GROUPS[group()].handles.map((id) => ({ id, label: HANDLES[id].label }))}
            value={picked() ?? ''}
            onPick={(id) => setPicked(id as HandleId)}
          />
          <p>
            <button type="button" class="button" onClick={() => (group() === 'strip' ? stripHere() : marksHere())}>
              {group() === 'strip' ? 'Lay the strip down the middle of what is in view' : 'Bring both marks into view'}
            </button>
          </p>
          <Show when={group() === 'scale' && marks()}>
            <p class="small">
              Zoomed as now, a mark is set to within ± {Math.round(pointingAt(stage.view(), picture.previewScale))} of
              the picture’s pixels{scaleOf(stage.view()) < 1 ? '; zoomed in, closer' : ''}.
            </p>
          </Show>
        </Show>
        <Show when={picture.reduced > 1}>
          <p class="small">The picture was too large for this device and is read at a lower resolution.</p>
        </Show>
      </div>
      <div>
        <Show when={roomy()}>
          <ScaleForm
            entry={entry()}
            distance={distance()}
            layer={layer()}
            keptLayer={keptText()}
            unit={unit()}
            mark={props.mark}
            onEntry={(part) => setEntry((old) => ({ ...old, ...part }))}
          />
        </Show>
        <p>
          <button
            type="button"
            class="button button-main"
            disabled={wanting() !== '' || progress() !== undefined}
            onClick={() => void look()}
          >
            Look for the ridges
          </button>
        </p>
        <Show when={wanting()}>
          <p class="small">{wanting()}</p>
        </Show>
        <Show when={progress()}>{(now) => <Task progress={now()} onCancel={() => running?.abort()} />}</Show>
        <Show when={trouble()}>
          {(words) => (
            <p class="problem" role="alert">
              {words()}
            </p>
          )}
        </Show>
        <Show when={answer()}>
          {(now) => (
            <RidgesResult
              finding={now().finding}
              strip={now().strip}
              stale={stale()}
              unit={unit()}
              mark={props.mark}
              take={props.take}
              onTake={(taken) => props.onTake(taken)}
            />
          )}
        </Show>
      </div>
    </div>
  );
}

const HINTS: Readonly<Record<Group, string>> = {
  picture:
    'One finger moves the picture, two turn and zoom it. With a mouse: drag, shift and drag to turn, the wheel to zoom. Turn it until the ridges lie level.',
  strip:
    'Drag the handles: ends 1 and 2 across the ridges, over as many as are clear; the strip as wide as the ridges run straight.',
  scale:
    'Drag the handles: A and B onto two marks of the rule, the edges of the jaws, or the first and the last of the layers.',
};
