import { createMemo, createUniqueId, For, Show } from 'solid-js';
import type { NoteFound, NoteRefused } from '../../../signal/note';
import { numberTicks } from '../../../ui/ticks';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 226;
const LEFT = 42;
const RIGHT = WIDTH - 12;
const TOP = 48;
const BOTTOM = HEIGHT - 40;
/** What lies further below the strongest line is left out. */
const DEPTH_DB = 60;
const HEADROOM_DB = 5;
/** Partials drawn closer than this run their numbers into each other. */
const LABEL_GAP = 13;
/** Hz: shown even of a very low note. */
const LEAST_TOP = 300;

interface Frame {
  readonly top: number;
  readonly strongest: number;
}

function frameOf(note: NoteFound | NoteRefused): Frame | undefined {
  const { spectrum } = note;
  if (!spectrum || spectrum.decibels.length < 2) return undefined;
  const end = spectrum.step * (spectrum.decibels.length - 1);
  const highest = note.status === 'found' ? Math.max(...note.partials.map(({ frequency }) => frequency), 0) : end;
  const wanted = note.status === 'found' ? Math.max(highest * 1.15, note.frequency * 4, LEAST_TOP) : end;
  const top = Math.min(wanted, end);
  let strongest = -Infinity;
  for (let k = 1; k * spectrum.step <= top; k += 1) strongest = Math.max(strongest, spectrum.decibels[k] ?? -Infinity);
  return Number.isFinite(strongest) ? { top, strongest } : undefined;
}

/** The line as a path, the loudest of each tenth of a unit: a spectrum has more bins than a screen has columns. */
function pathOf(note: NoteFound | NoteRefused, frame: Frame, x: (f: number) => number, y: (db: number) => number) {
  const { spectrum } = note;
  if (!spectrum) return '';
  const columns = new Map<number, number>();
  for (let k = 0; k * spectrum.step <= frame.top && k < spectrum.decibels.length; k += 1) {
    const column = Math.round(x(k * spectrum.step) * 2) / 2;
    const height = Math.max((spectrum.decibels[k] ?? -Infinity) - frame.strongest, -DEPTH_DB);
    columns.set(column, Math.max(columns.get(column) ?? -DEPTH_DB, height));
  }
  return [...columns].map(([at, height], i) => `${i === 0 ? 'M' : 'L'}${at} ${y(height).toFixed(1)}`).join('');
}

/** The spectrum of one pluck, to scale, with the note and its partials. */
export function NoteSpectrum(props: { note: NoteFound | NoteRefused; label: string; caption: string }) {
  const title = createUniqueId();
  const drawn = createMemo(() => {
    const frame = frameOf(props.note);
    if (!frame) return undefined;
    const x = (f: number) => LEFT + (f / frame.top) * (RIGHT - LEFT);
    const y = (db: number) => TOP + ((HEADROOM_DB - db) / (DEPTH_DB + HEADROOM_DB)) * (BOTTOM - TOP);
    let free = -Infinity;
    const partials = (props.note.status === 'found' ? props.note.partials : []).map(({ order, frequency }) => {
      const at = x(frequency);
      const labelled = at - free >= LABEL_GAP;
      if (labelled) free = at;
      return { order, at, labelled };
    });
    return { frame, x, y, partials, path: pathOf(props.note, frame, x, y) };
  });
  return (
    <Show when={drawn()}>
      {(now) => (
        <figure class="note-spectrum">
          <svg class="drawing" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-labelledby={title}>
            <title id={title}>{props.label}</title>
            <text class="d-text" x={4} y={14}>
              {say.spectrum.loudness}
            </text>
            <For each={[0, -20, -40, -60]}>
              {(decibels) => (
                <g>
                  <path class="d-thin" d={`M${LEFT - 4} ${now().y(decibels)} h4`} />
                  <text class="d-text" x={LEFT - 7} y={now().y(decibels) + 4} text-anchor="end">
                    {String(decibels).replace('-', '\u2212')}
                  </text>
                </g>
              )}
            </For>
            <For each={numberTicks(0, now().frame.top, 5)}>
              {(tick) => (
                <g>
                  <path class="d-thin" d={`M${now().x(tick)} ${BOTTOM} v4`} />
                  <text class="d-text" x={Math.min(now().x(tick), RIGHT - 6)} y={BOTTOM + 18} text-anchor="middle">
                    {tick}
                  </text>
                </g>
              )}
            </For>
            <For each={now().partials}>
              {(partial) => (
                <g>
                  <path
                    class={partial.order === 1 ? 'd-accent' : 'd-ghost'}
                    d={`M${partial.at} ${TOP - 4} V${BOTTOM}`}
                  />
                  <Show when={partial.labelled}>
                    <text
                      class={`d-text ${partial.order === 1 ? 'd-text-accent' : ''}`}
                      x={partial.at}
                      y={TOP - 9}
                      text-anchor="middle"
                    >
                      {partial.order}
                    </text>
                  </Show>
                </g>
              )}
            </For>
            <path class="note-line" d={now().path} />
            <path class="d-thin" d={`M${LEFT} ${TOP - 4} V${BOTTOM} H${RIGHT}`} />
            <text class="d-text" x={RIGHT} y={HEIGHT - 6} text-anchor="end">
              Hz
            </text>
          </svg>
          <figcaption class="small faint">{props.caption}</figcaption>
        </figure>
      )}
    </Show>
  );
}
