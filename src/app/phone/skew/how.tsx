import { How } from '../photo/how';
import say from './words/en';

/** How to take the photos: the sheet from above, the part on it, how it is turned over. */
export function SkewHow() {
  return (
    <How height={218} label={say.how.drawing} list={say.how.list}>
      <rect class="d-shade" x={12} y={8} width={316} height={202} />
      <rect class="d-ink d-fill" x={54} y={22} width={232} height={164} />
      <path class="d-ink d-shade" d="M134 66 H210 L206 142 H130 z" />
      <path class="d-accent" d="M136 56 C150 34 190 34 204 54 M204 54 l-2 -10 M204 54 l-10 -3" />
      <text class="d-text" x={170} y={38} text-anchor="middle">
        {say.how.over}
      </text>
      <text class="d-text" x={170} y={160} text-anchor="middle">
        {say.how.part}
      </text>
      <text class="d-text" x={170} y={204} text-anchor="middle">
        {say.how.sheet}
      </text>
    </How>
  );
}
