import { createEffect, createSignal, createUniqueId, For, Index, Show, type JSX } from 'solid-js';
import type { Option } from './quantity-field';

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
  presets: readonly string[];
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
  const problemId = (line: number, column: string): string => `${id}-${line}-${column}`;
  const last = (): string | undefined => props.columns.findLast((column) => column.signed)?.id;
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
            {(name) => (
              <button type="button" class="button" onClick={() => props.onPreset(name)}>
                {name}
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
              <span class="visually-hidden">Keys</span>
            </th>
          </tr>
        </thead>
        <tbody ref={setBody}>
          <Index each={props.lines}>
            {(cells, index) => (
              <>
                <tr data-line={index}>
                  <th scope="row">{index + 1}</th>
                  <Index each={cells()}>
                    {(cell) => (
                      <td data-column={cell().column}>
                        <Cell
                          cell={cell()}
                          problemId={problemId(index, cell().column)}
                          label={`${props.line} ${index + 1}, ${props.columns.find((column) => column.id === cell().column)?.heading ?? ''}`}
                          onText={(text) => props.onText(index, cell().column, text)}
                        />
                      </td>
                    )}
                  </Index>
                  <td class="reading-table-keys">
                    <Show when={last()}>
                      {(column) => (
                        <button
                          type="button"
                          class="button"
                          aria-label={`Change sign: ${props.line} ${index + 1}`}
                          onClick={() => {
                            const cell = cells().find((one) => one.column === column());
                            if (cell) props.onText(index, column(), otherSign(cell.text));
                          }}
                        >
                          ±
                        </button>
                      )}
                    </Show>
                    <button
                      type="button"
                      class="button"
                      aria-label={`Take out: ${props.line} ${index + 1}`}
                      onClick={() => props.onRemove(index)}
                    >
                      ×
                    </button>
                  </td>
                </tr>
                <Index each={cells().filter((cell) => cell.problem !== undefined)}>
                  {(cell) => (
                    <tr>
                      <td colSpan={props.columns.length + 2}>
                        <p class="problem" role="alert" id={problemId(index, cell().column)}>
                          {cell().problem}
                        </p>
                      </td>
                    </tr>
                  )}
                </Index>
              </>
            )}
          </Index>
        </tbody>
      </table>
      <Show when={props.problem}>{(problem) => <p class="faint small">{problem()}</p>}</Show>
      <div class="row">
        <button type="button" class="button" disabled={!props.canAdd} onClick={() => props.onAdd()}>
          Add a line
        </button>
        <Show when={props.tools.length > 0}>
          <select
            aria-label={`Read with: ${props.label}`}
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
