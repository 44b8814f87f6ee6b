import { createMemo, For, Index, Show } from 'solid-js';
import { length } from '../../quantity/kinds';
import { formatNumber } from '../../quantity/format';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import { layerErrors, LONGEST_REPEAT, patternOf } from './model';
import { printPlain } from './print';
import { UsualHeights } from './usual';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 256;
const LEFT = 44;
const RIGHT = WIDTH - 8;
/** Zero lines of the two charts, and the reach of one grid step in the drawing: one scale for both. */
const TOPS = 52;
const THICK = 148;
const STEP = 44;
const MOST_LAYERS = 40;
const FEWEST_LAYERS = 12;

/** A zero line with its scale in µm, one tick at plus and minus `reach` of a grid step. */
function Axis(props: { y: number; reach: number; tick: string; title: string }) {
  return (
    <g>
      <line class="d-thin" x1={LEFT} y1={props.y} x2={RIGHT} y2={props.y} />
      <For each={[-1, 1]}>
        {(side) => (
          <g>
            <line
              class="d-thin"
              x1={LEFT - 4}
              y1={props.y - side * props.reach * STEP}
              x2={LEFT}
              y2={props.y - side * props.reach * STEP}
            />
            <text class="d-text" x={LEFT - 6} y={props.y - side * props.reach * STEP + 4} text-anchor="end">
              {side < 0 ? '−' : '+'}
              {props.tick}
            </text>
          </g>
        )}
      </For>
      <line class="d-thin" x1={LEFT} y1={props.y - props.reach * STEP} x2={LEFT} y2={props.y + props.reach * STEP} />
      <text class="d-text" x={LEFT + 4} y={props.y - props.reach * STEP - 4}>
        {props.title}
      </text>
    </g>
  );
}

/** Errors of height and of thickness against the layer's number, over one repeat and a bit; below it the usual heights. */
export default function Figure(props: FigureProps<typeof calc>) {
  const h = () => props.value('h') ?? 0;
  const g = () => props.value('g') ?? 0;
  const usable = () => h() > 0 && g() > 0;
  const mm = (si: number) => printPlain(si, length.mm, props.mark);
  const um = (si: number) => formatNumber(si * 1e6, 3, props.mark);
  const pattern = createMemo(() => (usable() ? patternOf(h(), g()) : undefined));
  const repeat = () => pattern()?.repeat;
  const shown = () => Math.min(MOST_LAYERS, Math.max(FEWEST_LAYERS, Math.ceil((repeat() ?? MOST_LAYERS) * 1.25)));
  const layers = createMemo(() => (usable() ? layerErrors(h(), g(), shown()) : []));
  const x = (layer: number) => LEFT + ((RIGHT - LEFT) * layer) / shown();
  const drawn = (error: number) => (error / g()) * STEP;
  const tops = () => layers().map((layer) => `V${TOPS - drawn(layer.height)} H${x(layer.number)}`);
  const allowed = () => (props.value('k') ?? 0) * h();
  const nearest = () => {
    const found = pattern();
    if (!found) return '';
    if (found.repeat === 1) return say.figure.whole(mm(h()), props.choice.grid);
    return say.figure.nearest(
      props.choice.grid,
      found.below === undefined ? undefined : mm(found.below),
      mm(found.above),
    );
  };
  const span = () => {
    const found = pattern();
    const count = found?.repeat;
    if (!found) return '';
    if (count === 1) return say.figure.noRounding;
    if (count === undefined) return say.figure.noRepeat(LONGEST_REPEAT);
    return say.figure.repeats(count, printPlain(count * h(), length.mm, props.mark, 3));
  };
  return (
    <>
      <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
        <Show when={usable()}>
          <Axis y={TOPS} reach={0.5} tick={um(g() / 2)} title={say.figure.heightOff} />
          <path class="d-ink" d={`M${LEFT} ${TOPS} ${tops().join(' ')}`} />
          <Axis y={THICK} reach={1} tick={um(g())} title={say.figure.thicknessOff} />
          <Index each={layers()}>
            {(layer) => (
              <rect
                class={Math.abs(layer().thickness) > allowed() ? 'd-red d-shade' : 'd-ink d-shade'}
                x={x(layer().number - 1) + (x(1) - LEFT) * 0.15}
                y={THICK - Math.max(0, drawn(layer().thickness))}
                width={(x(1) - LEFT) * 0.7}
                height={Math.abs(drawn(layer().thickness))}
              />
            )}
          </Index>
          <Show when={allowed() < g()}>
            <For each={[-1, 1]}>
              {(side) => (
                <line
                  class="d-ghost"
                  x1={LEFT}
                  y1={THICK - side * drawn(allowed())}
                  x2={RIGHT}
                  y2={THICK - side * drawn(allowed())}
                />
              )}
            </For>
          </Show>
          <Index each={layers().filter((layer) => shown() <= 14 || layer.number % 5 === 0)}>
            {(layer) => (
              <text class="d-text" x={x(layer().number - 0.5)} y={THICK + STEP + 14} text-anchor="middle">
                {layer().number}
              </text>
            )}
          </Index>
          <Show
            when={(repeat() ?? 0) > 1 && (repeat() ?? 0) <= shown()}
            fallback={
              <text class="d-text" x={(LEFT + RIGHT) / 2} y={HEIGHT - 28} text-anchor="middle">
                {span()}
              </text>
            }
          >
            <DimensionLine x1={LEFT} y1={HEIGHT - 42} x2={x(repeat() ?? 0)} y2={HEIGHT - 42} text="" accent />
            <text class="d-text d-text-accent" x={LEFT} y={HEIGHT - 26}>
              {span()}
            </text>
          </Show>
          <text class="d-text" x={WIDTH / 2} y={HEIGHT - 6} text-anchor="middle">
            {nearest()}
          </text>
        </Show>
      </Drawing>
      <UsualHeights g={g()} travel={props.text('g')} grid={props.choice.grid} mark={props.mark} />
    </>
  );
}
