import { For, Show } from 'solid-js';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 240;
/** Where the guide's middle stands on paper, and how far the drawing reaches from it. */
const LEVEL = { x: 170, y: 172, reach: 138 };
const UPRIGHT = { x: 70, y: 120, reach: 240 };
const ARROW = 34;
/** Least length on paper of what must still be seen. */
const LEAST = 6;

/** The guide, where it is pushed, and how far out it would bind: all to one scale. */
export default function Figure(props: FigureProps<typeof calc>) {
  const upright = () => props.choice.way === 'upright';
  const origin = () => (upright() ? UPRIGHT : LEVEL);
  const offset = () => props.value('d') ?? 0.03;
  const size = () => props.value('L') ?? 0.04;
  const load = () => props.value('e_w') ?? 0;
  /** Each drive's line and its share of the pull. */
  const drives = () => {
    const [left, right, share] = (['d_1', 'd_2', 's'] as const).map((name) => props.value(name));
    if (props.choice.drive !== 'both' || left === undefined || right === undefined || share === undefined) return [];
    return [
      { line: left, share },
      { line: -right, share: 1 - share },
    ];
  };
  const far = () =>
    Math.max(Math.abs(offset()), Math.abs(load()), size(), 0.01, ...drives().map(({ line }) => Math.abs(line)));
  /** The binding line is drawn where it fits; else only its text stands. */
  const scale = () => {
    const bound = props.value('d_b');
    const wanted = bound !== undefined && bound < 4.5 * far() ? Math.max(far(), bound) : far();
    return Math.min(origin().reach / (1.08 * wanted), 170 / size());
  };
  /** A point by its place along the travel and its offset; offsets go up on paper, or to the right on an upright guide. */
  const at = (along: number, out: number) => ({
    x: origin().x + (upright() ? out : along),
    y: origin().y - (upright() ? along : out),
  });
  const half = () => Math.max(size() * scale(), LEAST) / 2;
  const sign = () => (offset() < 0 ? -1 : 1);
  const turning = () => ((props.value('A') ?? offset()) < 0 ? -1 : 1);
  const out = () => clamp(offset() * scale());
  const clamp = (length: number) => Math.min(Math.max(length, upright() ? -60 : -56), origin().reach);
  const line = (from: { x: number; y: number }, to: { x: number; y: number }) => ({
    x1: from.x,
    y1: from.y,
    x2: to.x,
    y2: to.y,
  });
  const binding = () => {
    const bound = props.value('d_b');
    if (bound === undefined) return undefined;
    const length = sign() * bound * scale();
    return length === clamp(length) ? length : undefined;
  };
  const margin = () => {
    const most = props.value('d_m');
    if (most === undefined) return undefined;
    const length = sign() * most * scale();
    return length === clamp(length) ? length : undefined;
  };
  const rail = 150;
  const drive = () => at(0, out());
  const mass = () => at(0, clamp(load() * scale()));

  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <line class="d-thin" {...line(at(-rail, 3), at(rail, 3))} />
      <line class="d-thin" {...line(at(-rail, -3), at(rail, -3))} />
      <polygon
        class="d-ink d-shade"
        points={[at(-half(), 9), at(half(), 9), at(half(), -9), at(-half(), -9)].map((p) => `${p.x},${p.y}`).join(' ')}
      />
      <line class="d-ink" {...line(at(0, 0), drive())} />
      <DimensionLine accent single {...line(drive(), at(ARROW, out()))} text="" />
      <Show when={binding()}>
        {(length) => <line class="d-ghost" {...line(at(-rail * 0.62, length()), at(rail * 0.62, length()))} />}
      </Show>
      <Show when={margin()}>
        {(length) => <line class="d-thin" {...line(at(-rail * 0.5, length()), at(rail * 0.5, length()))} />}
      </Show>
      <Show when={load() !== 0}>
        <line class="d-thin" {...line(at(0, 0), mass())} />
        <circle class="d-ink d-fill" cx={mass().x} cy={mass().y} r={5} />
        <text class="d-text" x={mass().x + 8} y={mass().y + 14}>
          {say.figure.mass}
        </text>
      </Show>
      <For each={drives()}>
        {(one) => (
          <DimensionLine
            single
            {...line(at(0, clamp(one.line * scale())), at(LEAST + ARROW * one.share, clamp(one.line * scale())))}
            text=""
          />
        )}
      </For>
      {/* The forces of the rail on the carriage: they hold it against turning. */}
      <DimensionLine single {...line(at(half(), turning() * -26), at(half(), turning() * -10))} text="" />
      <DimensionLine single {...line(at(-half(), turning() * 26), at(-half(), turning() * 10))} text="" />
      <text class="d-text d-text-accent" x={upright() ? 330 : 8} y={16} text-anchor={upright() ? 'end' : 'start'}>
        {say.figure.pushed(props.text('d'))}
      </text>
      <text class="d-text" x={upright() ? 330 : 8} y={32} text-anchor={upright() ? 'end' : 'start'}>
        {say.figure.binds(binding() !== undefined, props.text('d_b'))}
      </text>
      <text class="d-text" x={332} y={upright() ? 48 : 16} text-anchor="end">
        {say.figure.margin(margin() !== undefined, props.text('d_m'))}
      </text>
      <text class="d-text" x={332} y={upright() ? 222 : 226} text-anchor="end">
        {say.figure.guide(props.text('L'))}
      </text>
      <text class="d-text" x={upright() ? 332 : 8} y={upright() ? 206 : 226} text-anchor={upright() ? 'end' : 'start'}>
        {say.figure.contacts(props.text('N'))}
      </text>
    </Drawing>
  );
}
