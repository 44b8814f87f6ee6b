import say from './words/en';

/** The name, its T's bar running on as the beam, its last letter a point. The letters before the point are the face's own. */
export function Wordmark() {
  return (
    <svg class="wordmark" viewBox="0 0 152 34" aria-hidden="true">
      <text x="1" y="28" textLength="128" lengthAdjust="spacingAndGlyphs">
        {say.head.stem}
      </text>
      <path class="beam" d="M1 4 H151 v3.4 H1 z" />
      <path class="point" d="M134 0 h10 v15 L139 33.5 L134 15 z" />
    </svg>
  );
}
