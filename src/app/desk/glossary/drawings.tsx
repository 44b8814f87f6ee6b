import type { JSX } from 'solid-js';
import { Drawing } from '../../../ui/drawing';
import type { TermId } from './find';
import say from './words/en';

const {
  drawings,
  drawings: { labels },
} = say;
const word = (x: number, y: number, text: string, anchor: 'start' | 'middle' = 'middle') => (
  <text class="d-text" x={x} y={y} text-anchor={anchor}>
    {text}
  </text>
);

/** Slanted grooves of a screw of two starts; those of one start are inked. */
const Lead = () => (
  <Drawing width={240} height={92} label={drawings.lead}>
    <rect class="d-ink" x={10} y={24} width={220} height={34} />
    <path class="d-thin" d="M50 58l20 -34M110 58l20 -34M170 58l20 -34" />
    <path class="d-ink" d="M20 58l20 -34M80 58l20 -34M140 58l20 -34M200 58l20 -34" />
    <path class="d-ink" d="M40 18h60M40 14v8M100 14v8M140 66h30M140 62v8M170 62v8" />
    {word(70, 12, labels.lead)}
    {word(155, 84, labels.pitch)}
  </Drawing>
);

const Tir = () => (
  <Drawing width={240} height={92} label={drawings.tir}>
    <circle class="d-ghost" cx={70} cy={60} r={22} />
    <circle class="d-ink" cx={70} cy={48} r={22} />
    <path class="d-thin" d="M66 60h8M70 56v8" />
    <path class="d-ink" d="M70 26v-14M110 26h14M110 50h14M117 26v24" />
    {word(130, 42, labels.swing, 'start')}
  </Drawing>
);

const Wrap = () => (
  <Drawing width={240} height={92} label={drawings.wrap}>
    <circle class="d-ink" cx={70} cy={46} r={30} />
    <path class="d-ink" d="M220 14H70A32 32 0 0 0 70 78H220" stroke-width={3} />
    <path class="d-ghost" d="M70 14V78" />
    <path class="d-thin" d="M70 34A12 12 0 0 0 70 58" />
    {word(46, 50, labels.wrap)}
  </Drawing>
);

const Land = () => (
  <Drawing width={240} height={92} label={drawings.land}>
    <path class="d-ink" d="M30 8V60L96 86H110V70L92 48V8M190 8V60L144 86H130V70L148 48V8" />
    <path class="d-ink" d="M160 70h10M160 86h10M165 70v16" />
    {word(178, 84, labels.land, 'start')}
  </Drawing>
);

const HeatBreak = () => (
  <Drawing width={240} height={110} label={drawings.heatBreak}>
    <path
      class="d-ink"
      d="M70 6h60v8h-60zM70 20h60v8h-60zM70 34h60v8h-60zM94 42h12v22h-12zM64 64h72v26h-72zM90 90h20l-6 14h-8z"
    />
    {word(150, 28, labels.cold, 'start')}
    {word(150, 82, labels.hot, 'start')}
  </Drawing>
);

const DeadCentre = () => (
  <Drawing width={240} height={104} label={drawings.deadCentre}>
    <path class="d-ink" d="M10 14H170" />
    <circle class="d-ink" cx={90} cy={54} r={34} />
    <circle class="d-ink" cx={90} cy={66} r={10} />
    <path class="d-ghost" d="M90 16V100" />
    {word(176, 18, labels.rail, 'start')}
  </Drawing>
);

/** Where a picture says it better than a line. */
export const drawingOf: Readonly<Partial<Record<TermId, () => JSX.Element>>> = {
  lead: Lead,
  pitch: Lead,
  starts: Lead,
  tir: Tir,
  wrap: Wrap,
  land: Land,
  heatBreak: HeatBreak,
  deadCentre: DeadCentre,
};
