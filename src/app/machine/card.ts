import type { Place } from '../../engine/places';
import type { Machine } from '../../machine/schema';
import type { DecimalMark } from '../../quantity/parse';
import { printDay } from '../desk/time';
import { groupsOf, printHow, printKept } from './value-groups';
import say from './words/en';

export interface CardRow {
  readonly label: string;
  readonly value: string;
  /** "caliper, 2 Mar 2026"; empty for an option, which carries neither. */
  readonly origin: string;
}

export interface CardGroup {
  readonly name: string;
  readonly rows: readonly CardRow[];
}

function rowOf(place: Place, machine: Machine, mark: DecimalMark): CardRow | undefined {
  if ('choice' in place) {
    const option = machine.choices[place.place];
    if (option === undefined) return undefined;
    return { label: place.choice.label, value: place.choice.options[option]?.label ?? option, origin: '' };
  }
  const kept = machine.values[place.place];
  if (!kept) return undefined;
  return {
    label: place.input.label,
    value: printKept(kept, place.input, mark),
    origin: say.value.origin(printHow(kept), printDay(kept.at)),
  };
}

/** What is known of a machine, by group; groups of which nothing is known left out. */
export function cardOf(machine: Machine, places: readonly Place[], mark: DecimalMark): readonly CardGroup[] {
  return groupsOf(places)
    .map(({ name, places: members }) => ({
      name,
      rows: members.flatMap((place) => rowOf(place, machine, mark) ?? []),
    }))
    .filter((group) => group.rows.length > 0);
}

const lineOf = ({ label, value, origin }: CardRow): string =>
  origin === '' ? say.card.line(label, value) : say.card.lineWithOrigin(label, value, origin);

/** The card as plain text, to send or paste. */
export function cardText(name: string, groups: readonly CardGroup[], now: Date): string {
  const lines = groups.flatMap((group) => ['', group.name, ...group.rows.map((row) => `  ${lineOf(row)}`)]);
  return [name, say.card.date(printDay(now.toISOString())), ...lines, ''].join('\n').replaceAll('\u00a0', ' ');
}
