import type { InputSpec } from '../../engine/calculator';
import { machinePlaces, type Place } from '../../engine/places';
import { angle, frequency, length, perLength } from '../../quantity/kinds';
import type { Measure } from '../../quantity/unit';
import { fetchPart } from './parts/fetch-part';
import say from './words/en';

type Own = keyof typeof say.places;
const own = (place: Own, measure: Measure, rest: Omit<InputSpec, 'label' | 'measure'>): Place => ({
  place,
  input: { label: say.places[place], measure, ...rest },
});
const STEPS = { range: [0.1, 100_000] } as const;
const NOTE = { range: [1, 2000] } as const;
const OFFSET = { range: [-1000, 1000], signed: 'scale', tool: 'caliper' } as const;
const TURN = { range: [0, 360], tool: 'protractor' } as const;

/** What a person keeps of a machine though no check draws from it. A check that comes to name such a place takes it over. */
const kept: readonly Place[] = [
  own('belt.note-x', frequency.Hz, NOTE),
  own('belt.note-y', frequency.Hz, NOTE),
  own('offset.bed', length.mm, OFFSET),
  own('offset.probe-x', length.mm, OFFSET),
  own('offset.probe-y', length.mm, OFFSET),
  own('offset.probe-z', length.mm, OFFSET),
  own('steps.feed', perLength.per_mm, STEPS),
  own('steps.x', perLength.per_mm, STEPS),
  own('steps.y', perLength.per_mm, STEPS),
  own('steps.z', perLength.per_mm, STEPS),
  own('wheel.bush-turn', angle.deg, TURN),
];

/** Every place of a machine's card: those that checks draw from and those kept for their own sake. */
export async function cardPlaces(): Promise<readonly Place[]> {
  const drawn = await fetchPart(() => machinePlaces());
  const taken = new Set(drawn.map((place) => place.place));
  return [...drawn, ...kept.filter((place) => !taken.has(place.place))].sort((a, b) => a.place.localeCompare(b.place));
}
