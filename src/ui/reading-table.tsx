import { createEffect, createSignal, createUniqueId, For, Index, Show, type JSX } from 'solid-js';
import type { Option } from './quantity-field';
import say from './words/en';

export interface TableColumn {
  readonly id: string;
  readonly heading: string;
  readonly unit: string;
  readonly signed: boolean;
}

export interface TableCell {
  readonly column: string;
  readonly text: string;
  /** The value in force where nothing is typed. */
  readonly placeholder: string;
  readonly problem: string | undefined;
  /** Said below it though it can be used. */
  readonly remark: string | undefined;
}

interface TableProps {
  label: string;
  hint: string;
  /** What one line is. */
  line: string;
  columns: readonly TableColumn[];
  lines: readonly (readonly TableCell[])[];
  problem: string | undefined;
  tool: string;
  tools: readonly Option[];
  canAdd: boolean;
  presets: readonly { readonly id: string; readonly label: string }[];
  /** Where to put the cursor; a new object each time. */
  cursor?: { readonly line: number; readonly column: string } | undefined;
  /** Stands above the table, below its hint. */
  children?: JSX.Element;
  onTool: (tool: string) => void;
  onText: (line: number, column: string, text: string) => void;
  onAdd: () => void;
  onRemove: (line: number) => void;
  onPreset: (name: string) => void;
}

const otherSign = (text: string): string =>
  /^\s*[-−]/.test(text) ? text.replace(/^\s*[-−]\s*/, '') : `-${text.trim()}`;

/** Readings in lines and columns, as many lines as the person takes. */
export function ReadingTable(props: TableProps) {
  const id = createUniqueId();
  const [body, setBody] = createSignal<HTMLTableSectionElement>();
  createEffect(() => {
    const at = props.cursor;
    const cell = at && `[data-line="${at.line}"] [data-column="${at.column}"] input`;
    if (cell !== undefined) body()?.querySelector<HTMLInputElement>(cell)?.focus();
  });
  return (
    <section class="reading-table" aria-labelledby={id}>
      <h3 id={id}>{props.label}</h3>
      <p class="field-hint">{props.hint}</p>
      <Show when={props.presets.length > 0}>
        <div class="row">
          <For each={props.presets}>
            {(preset) => (
              <button type="button" class="button" onClick={() => props.onPreset(preset.id)}>
                {preset.label}
              </button>
            )}
          </For>
        </div>
      </Show>
      {props.children}
      <table>
        <thead>
          <tr>
            <th scope="col">{props.line}</th>
            <For each={props.columns}>
              {(column) => (
                <th scope="col">
                  {column.heading}
                  <Show when={column.unit !== ''}>
                    <br />
                    <span class="faint">{column.unit}</span>
                  </Show>
                </th>
              )}
            </For>
            <th scope="col">
              <span class="unseen">{say.table.keys}</span>
            </th>
          </tr>
        </thead>
        <tbody ref={setBody}>
          <Index each={props.lines}>
            {(cells, index) => (
              <Line
                number={index + 1}
                cells={cells()}
                line={props.line}
                columns={props.columns}
                onText={(column, text) => props.onText(index, column, text)}
                onRemove={() => props.onRemove(index)}
              />
            )}
          </Index>
        </tbody>
      </table>
      <Show when={props.problem}>{(problem) => <p class="faint small">{problem()}</p>}</Show>
      <div class="row">
        <button type="button" class="button" disabled={!props.canAdd} onClick={() => props.onAdd()}>
          {say.table.add}
        </button>
        <Show when={props.tools.length > 0}>
          <select
            aria-label={say.field.readWith(props.label)}
            value={props.tool}
            onChange={(event) => props.onTool(event.currentTarget.value)}
          >
            <For each={props.tools}>{(tool) => <option value={tool.id}>{tool.label}</option>}</For>
          </select>
        </Show>
      </div>
    </section>
  );
}

/** One line of the table; below it a sentence for each cell that cannot be used. */
function Line(props: {
  number: number;
  cells: readonly TableCell[];
  line: string;
  columns: readonly TableColumn[];
  onText: (column: string, text: string) => void;
  onRemove: () => void;
}) {
  const id = createUniqueId();
  const problemId = (column: string): string => `${id}-${column}`;
  const headingOf = (id: string): string => props.columns.find((column) => column.id === id)?.heading ?? '';
  const turning = (): string | undefined => props.columns.findLast((column) => column.signed)?.id;
  const turn = (column: string): void => {
    const cell = props.cells.find((one) => one.column === column);
    if (cell) props.onText(column, otherSign(cell.text));
  };
  return (
    <>
      <tr data-line={props.number - 1}>
        <th scope="row">{props.number}</th>
        <Index each={props.cells}>
          {(cell) => (
            <td data-column={cell().column}>
              <Cell
                cell={cell()}
                problemId={problemId(cell().column)}
                label={say.table.cell(props.line, props.number, headingOf(cell().column))}
                onText={(text) => props.onText(cell().column, text)}
              />
            </td>
          )}
        </Index>
        <td class="reading-table-keys">
          <Show when={turning()}>
            {(column) => (
              <button
                type="button"
                class="button"
                aria-label={say.table.changeSign(props.line, props.number)}
                onClick={() => turn(column())}
              >
                ±
              </button>
            )}
          </Show>
          <button
            type="button"
            class="button"
            aria-label={say.table.takeOut(props.line, props.number)}
            onClick={() => props.onRemove()}
          >
            ×
          </button>
        </td>
      </tr>
      <Index each={props.cells.flatMap(({ remark }) => remark ?? [])}>
        {(remark) => (
          <tr>
            <td colSpan={props.columns.length + 2}>
              <p class="small" role="status">
                {remark()}
              </p>
            </td>
          </tr>
        )}
      </Index>
      <Index each={props.cells.filter((cell) => cell.problem !== undefined)}>
        {(cell) => (
          <tr>
            <td colSpan={props.columns.length + 2}>
              <p class="problem" role="alert" id={problemId(cell().column)}>
                {cell().problem}
              </p>
            </td>
          </tr>
        )}
      </Index>
    </>
  );
}

function Cell(props: { cell: TableCell; problemId: string; label: string; onText: (text: string) => void }) {
  const [entry, setEntry] = createSignal<HTMLInputElement>();
  // As in a single field: only a change from outside writes into the box.
  createEffect(() => {
    const box = entry();
    if (box && box.value !== props.cell.text) box.value = props.cell.text;
  });
  return (
    <input
      ref={setEntry}
      type="text"
      inputmode="decimal"
      autocomplete="off"
      spellcheck={false}
      aria-label={props.label}
      aria-invalid={props.cell.problem === undefined ? undefined : 'true'}
      aria-describedby={props.cell.problem === undefined ? undefined : props.problemId}
      placeholder={props.cell.placeholder}
      onInput={(event) => props.onText(event.currentTarget.value)}
      onFocus={(event) => event.currentTarget.select()}
    />
  );
}
