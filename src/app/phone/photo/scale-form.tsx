import { Show } from 'solid-js';
import type { DecimalMark } from '../../../quantity/parse';
import type { Unit } from '../../../quantity/unit';
import { ChoiceField } from '../../../ui/choice-field';
import { mayStandBefore, takenFor, type Read, type ScaleEntry, type Standard } from './scale';
import { TextLine } from './text-line';
import say from './words/en';

const problemOf = (read: Read<unknown>): string | undefined => (read.ok || read.blank ? undefined : read.reason);

/** Whether the scale lies on the wall; where it stands before it, by how much, and how far away the camera was. */
function ScalePlace(props: { entry: ScaleEntry; unit: Unit; onEntry: (part: Partial<ScaleEntry>) => void }) {
  const place = () => props.entry.place ?? 'flat';
  return (
    <>
      <ChoiceField
        label={say.scale.place.title}
        options={Object.entries(say.scale.place.ways).map(([id, label]) => ({ id, label }))}
        value={place()}
        onPick={(id) => props.onEntry({ place: id as 'flat' | 'before' })}
      />
      <Show when={place() === 'before'}>
        <TextLine
          label={say.scale.place.before}
          text={props.entry.before ?? ''}
          placeholder={say.scale.in(props.unit.label)}
          problem={undefined}
          decimal
          onText={(before) => props.onEntry({ before })}
        />
        <TextLine
          label={say.scale.place.away}
          text={props.entry.away ?? ''}
          placeholder={say.scale.in(props.unit.label)}
          problem={undefined}
          decimal
          onText={(away) => props.onEntry({ away })}
        />
        <p class="field-hint">{say.scale.place.taken}</p>
      </Show>
    </>
  );
}

/** What lies between the two scale marks, and the layer height where it tells something. */
export function ScaleForm(props: {
  entry: ScaleEntry;
  distance: Read<unknown>;
  layer: Read<unknown>;
  /** The machine's layer height, printed; empty where it is not known. */
  keptLayer: string;
  unit: Unit;
  mark: DecimalMark;
  /** By which standards. */
  standards: readonly Standard[];
  onEntry: (part: Partial<ScaleEntry>) => void;
}) {
  const standard = () => props.entry.standard;
  const layerProblem = () => problemOf(props.layer);
  const distanceProblem = () => {
    const problem = problemOf(props.distance);
    return problem === layerProblem() ? undefined : problem;
  };
  return (
    <>
      <ChoiceField
        label={say.scale.between}
        options={props.standards.map((id) => ({ id, label: say.scale.standards[id].label }))}
        value={standard()}
        onPick={(id) => props.onEntry({ standard: id as Standard })}
      />
      <Show
        when={standard() === 'layers'}
        fallback={
          <TextLine
            label={say.scale.standards[standard()].field}
            text={props.entry.text}
            placeholder={say.scale.example(props.unit.label)}
            problem={distanceProblem()}
            decimal
            onText={(text) => props.onEntry({ text })}
          />
        }
      >
        <TextLine
          label={say.scale.standards.layers.field}
          text={props.entry.layers}
          placeholder={say.scale.whole}
          problem={distanceProblem()}
          decimal={false}
          onText={(layers) => props.onEntry({ layers })}
        />
      </Show>
      <Show when={mayStandBefore(standard())}>
        <ScalePlace entry={props.entry} unit={props.unit} onEntry={(part) => props.onEntry(part)} />
      </Show>
      <p class="field-hint">{takenFor(standard(), props.unit, props.mark)}</p>
      <Show when={props.standards.includes('layers')}>
        <TextLine
          label={standard() === 'layers' ? say.scale.layer : say.scale.layerToo}
          text={props.entry.layer}
          placeholder={props.keptLayer === '' ? say.scale.in(props.unit.label) : say.scale.machines(props.keptLayer)}
          problem={layerProblem()}
          decimal
          onText={(layer) => props.onEntry({ layer })}
        />
      </Show>
    </>
  );
}
