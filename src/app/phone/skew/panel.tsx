import '../photo/photo.css';
import { Show } from 'solid-js';
import { formatMeasured } from '../../../quantity/format';
import { length } from '../../../quantity/kinds';
import type { DecimalMark } from '../../../quantity/parse';
import { skewOf, type Skew } from '../../../signal/sheet';
import { Fold } from '../../../ui/fold';
import type { PanelProps } from '../panel';
import shared from '../photo/words/en';
import { SkewHow } from './how';
import { createShot, ShotView } from './shot';
import say from './words/en';

/** m: what a skew is stated over, as a slope times this. */
const OVER = 0.1;

/** How far a printed part is from square, from two photos of it on a sheet of paper, turned over in between. */
export function SkewPanel(props: PanelProps) {
  const [first, second] = [createShot(), createShot()];
  const skew = () => {
    const [a, b] = [first.finding(), second.finding()];
    return a?.status === 'seen' && b?.status === 'seen' ? skewOf(a, b) : undefined;
  };
  return (
    <div class="measure">
      <Show
        when={!first.picture()}
        fallback={
          <Fold title={say.how.title}>
            <SkewHow />
          </Fold>
        }
      >
        <section class="section">
          <h2>{say.how.title}</h2>
          <SkewHow />
        </section>
      </Show>
      <p class="small faint">{shared.panel.notKept}</p>
      <ShotView shot={first} words={say.photos.first} main={!first.picture()} mark={props.mark} />
      <ShotView
        shot={second}
        words={say.photos.second}
        main={first.picture() !== undefined && !second.picture()}
        mark={props.mark}
      />
      <Show when={skew()} fallback={<p class="small">{say.result.both}</p>}>
        {(one) => <SkewResult {...props} skew={one()} />}
      </Show>
    </div>
  );
}

function SkewResult(props: PanelProps & { skew: Skew }) {
  const found = () => (props.skew.status === 'found' ? props.skew : undefined);
  const over = (slope: number, half: number, mark: DecimalMark) =>
    formatMeasured(OVER * slope, OVER * half, length.mm.unit, { mark });
  return (
    <section class="section" aria-label={say.result.title}>
      <h2>{say.result.title}</h2>
      <div role="status">
        <Show when={found()} fallback={<p class="problem">{say.refusal['not turned over']}</p>}>
          {(one) => (
            <>
              <p class="reading-large">{over(Math.abs(one().skew), one().halfWidth, props.mark)}</p>
              <p>{say.result.over(over(Math.abs(one().skew), one().halfWidth, props.mark))}</p>
              <p>
                {Math.abs(one().skew) <= one().halfWidth
                  ? say.result.square
                  : one().skew > 0
                    ? say.result.sharp
                    : say.result.wide}
              </p>
            </>
          )}
        </Show>
      </div>
      <Show when={found()}>
        {(one) => (
          <>
            <button
              type="button"
              class="button button-main"
              onClick={() => props.onTake({ value: one().skew, halfWidth: one().halfWidth })}
            >
              {props.take}
            </button>
            <p class="small">
              {say.result.sheet(over(Math.abs(one().sheet), one().halfWidth, props.mark))} {say.result.interval}
            </p>
          </>
        )}
      </Show>
    </section>
  );
}
