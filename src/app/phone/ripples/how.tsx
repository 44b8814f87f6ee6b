import { How } from '../photo/how';
import say from './words/en';

/** A ripple's crest at this many pixels from the corner, each fainter than the one before. */
const CRESTS = Array.from({ length: 7 }, (_, i) => ({ x: 66 + i * 26, height: 60 * 0.72 ** i }));

/** How to take the photo: a wall seen square on, its ripples, the rule, the lamp. */
export function RipplesHow() {
  return (
    <How height={176} label={say.how.drawing} list={say.how.list}>
      <path class="d-ink d-shade" d="M40 24 H320 V112 H40 z" />
      <path
        class="d-accent"
        d={CRESTS.map(({ x, height }) => `M${x} ${68 - height / 2} V${68 + height / 2}`).join(' ')}
      />
      <path class="d-fill" d="M60 96 H300 v12 H60 z" />
      <path class="d-thin" d={Array.from({ length: 23 }, (_, i) => `M${65 + i * 10} 96 v5`).join(' ')} />
      <circle class="d-fill" cx={16} cy={20} r={8} />
      <path class="d-ghost" d="M24 24 L120 60 M24 28 L100 90" />
      <text class="d-text" x={30} y={14}>
        {say.how.lamp}
      </text>
      <text class="d-text" x={40} y={130}>
        {say.how.corner}
      </text>
      <text class="d-text" x={320} y={130} text-anchor="end">
        {say.how.rule}
      </text>
      <text class="d-text" x={316} y={44} text-anchor="end">
        {say.how.dies}
      </text>
    </How>
  );
}
