import { createMemo, createSignal, onCleanup, type Accessor } from 'solid-js';
import type { OnProgress, Progress } from '../../../instrument/picture';
import { formatMeasured } from '../../../quantity/format';
import { length } from '../../../quantity/kinds';
import type { DecimalMark } from '../../../quantity/parse';
import type { Scale, Strip } from '../../../signal/ridge-types';
import { useRecords } from '../../desk/context';
import type { Marks } from './marks';
import { readDistance, readLayer, type ScaleEntry } from './scale';
import { troubleOf } from './trouble';
import say from './words/en';

/** What is asked of the picture; the layer height in m, where it is known. */
export interface Asked {
  readonly strip: Strip;
  readonly scale: Scale;
  readonly layer: number | undefined;
}

/** Asks the picture in the background. */
export type Seek<F> = (asked: Asked, stop: AbortSignal, tell: OnProgress) => Promise<F>;

/** What was found, where, and what it answers. */
interface Found<F> {
  readonly finding: F;
  readonly strip: Strip;
  readonly to: unknown;
}

function scaleFrom({ scale: [a, b] }: Marks, distance: Pick<Scale, 'distance' | 'halfWidth' | 'measured'>): Scale {
  return { from: a.at, to: b.at, pointing: Math.max(a.pointing ?? 1, b.pointing ?? 1), ...distance };
}

/** What lies between the scale marks, as typed, and as it is read. */
function createScale(mark: Accessor<DecimalMark>) {
  const records = useRecords();
  const [entry, setEntry] = createSignal<ScaleEntry>({ standard: 'rule', text: '', layers: '', layer: '' });
  const unit = () => (records.settings().lengthUnit === 'in' ? length.in.unit : length.mm.unit);
  const kept = () => records.current()?.values['print.layer'];
  const layer = createMemo(() => readLayer(entry().layer, kept(), unit(), mark()));
  const distance = createMemo(() => readDistance(entry(), kept(), unit(), mark()));
  return {
    entry,
    enter: (part: Partial<ScaleEntry>): void => void setEntry((old) => ({ ...old, ...part })),
    unit,
    /** The machine's layer height, printed; empty where it is not known. */
    keptLayer: () => {
      const height = kept();
      return height ? formatMeasured(height.value, height.half, unit(), { mark: mark() }) : '';
    },
    layer,
    distance,
  };
}

/** What is looked for in an open picture, by its marks and by what is typed of the scale. */
export function createLooking<F>(seek: Seek<F>, marks: Accessor<Marks | undefined>, mark: Accessor<DecimalMark>) {
  const scale = createScale(mark);
  const [progress, setProgress] = createSignal<Progress>();
  const [trouble, setTrouble] = createSignal<string>();
  const [found, setFound] = createSignal<Found<F>>();
  let running: AbortController | undefined;
  onCleanup(() => running?.abort());

  /** What a finding answers: anew whenever something in it changes. */
  const question = createMemo(() => ({ marks: marks(), distance: scale.distance(), layer: scale.layer() }));

  const look = async (): Promise<void> => {
    const asked = question();
    if (!asked.marks || !asked.distance.ok) return;
    running?.abort();
    const stop = new AbortController();
    running = stop;
    setTrouble(undefined);
    setProgress({ part: 'sampling', done: 0 });
    const { strip } = asked.marks;
    const layer = asked.layer.ok ? asked.layer.value.value : undefined;
    try {
      const along = scaleFrom(asked.marks, asked.distance.value);
      const finding = await seek({ strip, scale: along, layer }, stop.signal, setProgress);
      if (running === stop) setFound({ finding, strip, to: asked });
    } catch (error) {
      if (running === stop) setTrouble(troubleOf(error, say.cancelled.looking));
    } finally {
      if (running === stop) setProgress(undefined);
    }
  };

  return {
    scale,
    progress,
    trouble,
    found,
    /** Something was changed since it was found. */
    isStale: () => found()?.to !== question(),
    /** What is still to be done before looking; empty where nothing is. */
    wanting: () => {
      const asked = question();
      if (asked.marks?.scale.some(({ pointing }) => pointing === undefined) ?? true) return say.wanting.setMarks;
      if (!asked.distance.ok)
        return asked.distance.blank && scale.entry().place !== 'before'
          ? say.wanting.sayDistance
          : asked.distance.reason;
      return asked.layer.ok || asked.layer.blank ? '' : asked.layer.reason;
    },
    look,
    stop: () => running?.abort(),
  };
}

export type Looking<F> = ReturnType<typeof createLooking<F>>;
