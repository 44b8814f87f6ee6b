import { DimensionLine } from '../../../ui/drawing';
import { How } from '../photo/how';
import say from './words/en';

const RIDGES = Array.from({ length: 9 }, (_, i) => 24 + i * 20);

/** How to take the photo: the wall in section, the lamp along it, the camera square to it. */
export function RidgesHow() {
  const wall = () => `M70 14 V206 H96 V14 z`;
  const crests = () => RIDGES.map((y) => `M96 ${y - 8} q9 8 0 16`).join(' ');
  return (
    <How height={222} label={say.how.drawing} list={say.how.list}>
      <path class="d-shade" d={wall()} />
      <path class="d-ink" d={`M96 14 V206 ${crests()}`} />
      <path class="d-fill" d="M104 20 h7 v186 h-7 z" />
      <path class="d-thin" d={RIDGES.map((y) => `M107 ${y} h4`).join(' ')} />
      <text class="d-text" x={118} y={204}>
        {say.how.rule}
      </text>
      <circle class="d-fill" cx={128} cy={18} r={9} />
      <path class="d-accent" d="M124 29 L106 84 M130 30 L110 118 M136 29 L116 146" />
      <text class="d-text" x={144} y={22}>
        {say.how.lamp}
      </text>
      <rect class="d-fill" x={278} y={72} width={12} height={78} rx={3} />
      <path class="d-ghost" d="M278 111 L98 48 M278 111 L98 174" />
      <DimensionLine x1={98} y1={111} x2={276} y2={111} single text={say.how.square} dx={34} />
      <text class="d-text" x={296} y={170} text-anchor="middle">
        {say.how.phone}
      </text>
      <text class="d-text" x={10} y={114}>
        {say.how.wall}
      </text>
    </How>
  );
}
