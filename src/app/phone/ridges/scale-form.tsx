import { createUniqueId, Show } from 'solid-js';
import type { DecimalMark } from '../../../quantity/parse';
import type { Unit } from '../../../quantity/unit';
import { ChoiceField } from '../../../ui/choice-field';
import { standards, takenFor, type Read, type ScaleEntry, type Standard } from './scale';

function TextLine(props: {
  label: string;
  text: string;
  placeholder: string;
  problem: string | undefined;
  decimal: boolean;
  onText: (text: string) => void;
}) {
  const id = createUniqueId();
  return (
    <p>
      <label for={id}>{props.label}</label>
      <input
        id={id}
        class="text-input"
        type="text"
        inputmode={props.decimal ? 'decimal' : 'numeric'}
        autocomplete="off"
        placeholder={props.placeholder}
        value={props.text}
        aria-invalid={props.problem === undefined ? undefined : 'true'}
        aria-describedby={props.problem === undefined ? undefined : `${id}-problem`}
        onInput={(event) => props.onText(event.currentTarget.value)}
      />
      <Show when={props.problem}>
        {(problem) => (
          <span class="problem measure-problem" id={`${id}-problem`} role="alert">
            {problem()}
          </span>
        )}
      </Show>
    </p>
  );
}

const problemOf = (read: Read<unknown>): string | undefined => (read.ok || read.blank ? undefined : read.reason);

/** What lies between the two scale marks, and the layer height. */
export function ScaleForm(props: {
  entry: ScaleEntry;
  distance: Read<unknown>;
  layer: Read<unknown>;
  /** The machine's layer height, printed; empty where it is not known. */
  keptLayer: string;
  unit: Unit;
  mark: DecimalMark;
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
        label="Between the marks A and B lie"
        options={Object.entries(standards).map(([id, { label }]) => ({ id, label }))}
        value={standard()}
        onPick={(id) => props.onEntry({ standard: id as Standard })}
      />
      <Show
        when={standard() === 'layers'}
        fallback={
          <TextLine
            label={standards[standard()].field}
            text={props.entry.text}
            placeholder={`in ${props.unit.label}, as 40 ± 0.1`}
            problem={distanceProblem()}
            decimal
            onText={(text) => props.onEntry({ text })}
          />
        }
      >
        <TextLine
          label={standards.layers.field}
          text={props.entry.layers}
          placeholder="a whole number"
          problem={distanceProblem()}
          decimal={false}
          onText={(layers) => props.onEntry({ layers })}
        />
      </Show>
      <p class="field-hint">{takenFor(standard(), props.unit, props.mark)}</p>
      <TextLine
        label={standard() === 'layers' ? 'Layer height' : 'Layer height, to tell the layers’ own line (may stay empty)'}
        text={props.entry.layer}
        placeholder={props.keptLayer === '' ? `in ${props.unit.label}` : `${props.keptLayer}, the machine’s`}
        problem={layerProblem()}
        decimal
        onText={(layer) => props.onEntry({ layer })}
      />
    </>
  );
}
