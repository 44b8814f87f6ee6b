import { input } from '../../engine/calculator';
import { machinePlaces, type Place } from '../../engine/places';
import { angle, frequency, length, perLength } from '../../quantity/kinds';

const steps = (axis: string) => input(`Steps per length, ${axis}`, perLength.per_mm, { range: [0.1, 100_000] });
const note = (axis: string) => input(`Belt note, ${axis}`, frequency.Hz, { range: [1, 2000] });
const offset = (label: string) => input(label, length.mm, { range: [-1000, 1000], signed: true, tool: 'caliper' });

/** What a person keeps of a machine though no check draws from it. A check that comes to name such a place takes it over. */
const own: readonly Place[] = [
  { place: 'belt.note-x', input: note('X') },
  { place: 'belt.note-y', input: note('Y') },
  { place: 'offset.bed', input: offset('First layer set closer (−) or farther (+) by') },
  { place: 'offset.probe-x', input: offset('Probe from nozzle, to the right') },
  { place: 'offset.probe-y', input: offset('Probe from nozzle, to the back') },
  { place: 'offset.probe-z', input: offset('Probe switches above the nozzle by') },
  { place: 'steps.extruder', input: steps('filament') },
  { place: 'steps.x', input: steps('X') },
  { place: 'steps.y', input: steps('Y') },
  { place: 'steps.z', input: steps('Z') },
  {
    place: 'wheel.bush-turn',
    input: input('Eccentric bush, turned in from slack by', angle.deg, { range: [0, 360], tool: 'protractor' }),
  },
];

/** Every place of a machine's card: those that checks draw from and those kept for their own sake. */
export async function cardPlaces(): Promise<readonly Place[]> {
  const drawn = await machinePlaces();
  const taken = new Set(drawn.map((place) => place.place));
  return [...drawn, ...own.filter((place) => !taken.has(place.place))].sort((a, b) => a.place.localeCompare(b.place));
}
