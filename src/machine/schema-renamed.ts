import { checkNow, inCaseNow, optionNow, placesNow, symbolsNow } from '../reference/renamed';
import { isPlain } from './plain';

type Raw = Readonly<Record<string, unknown>>;
type Names = (name: string) => readonly string[];

/** A map under today's names. What stands under a name of today already is not written over. */
function renamedKeys(map: unknown, names: Names): unknown {
  if (!isPlain(map)) return map;
  const moved = Object.entries(map).flatMap(([name, value]) => names(name).map((now) => [now, value, name] as const));
  const stays = ([now, , name]: readonly [string, unknown, string]) => now === name || !Object.hasOwn(map, now);
  return Object.fromEntries(moved.filter(stays).map(([now, value]) => [now, value]));
}

const fieldsIn = (list: unknown, renamed: (one: Raw) => Raw): unknown =>
  Array.isArray(list) ? list.map((one: unknown) => (isPlain(one) ? renamed(one) : one)) : list;

/** What is entered in a check, or was before something else took its place. */
function entered(record: Raw, check: string): Raw {
  const now: Names = (symbol) => symbolsNow(check, symbol);
  const picked = (choices: unknown): unknown =>
    isPlain(choices)
      ? Object.fromEntries(
          Object.entries(choices).map(([symbol, option]) => [
            symbol,
            typeof option === 'string' ? optionNow(check, symbol, option) : option,
          ]),
        )
      : choices;
  return {
    ...record,
    ...('entries' in record ? { entries: renamedKeys(record.entries, now) } : {}),
    ...('choices' in record ? { choices: renamedKeys(picked(record.choices), now) } : {}),
    ...(isPlain(record.before) ? { before: entered(record.before, check) } : {}),
  };
}

function ofCheck(record: Raw): Raw {
  const check = typeof record.calculator === 'string' ? checkNow(record.calculator) : '';
  const now: Names = (symbol) => symbolsNow(check, symbol);
  const one = (symbol: unknown) => (typeof symbol === 'string' ? now(symbol)[0] : symbol);
  const { order } = record;
  return {
    ...entered(record, check),
    ...(check === '' ? {} : { calculator: check }),
    ...('results' in record ? { results: renamedKeys(record.results, now) } : {}),
    ...('limits' in record
      ? {
          limits: fieldsIn(record.limits, ({ of, max, min, ...rest }) => ({
            ...{ ...rest, of: one(of) },
            ...(max === undefined ? {} : { max: one(max) }),
            ...(min === undefined ? {} : { min: one(min) }),
          })),
        }
      : {}),
    ...(isPlain(order)
      ? {
          order: {
            ...order,
            assumes: fieldsIn(order.assumes, ({ symbol, ...rest }) => ({ ...rest, symbol: one(symbol) })),
            expects: renamedKeys(order.expects, now),
          },
        }
      : {}),
  };
}

/** A case, whose causes, inspections and facts had other names. */
function ofCase(record: Raw): Raw {
  const one = (id: unknown) => (typeof id === 'string' ? inCaseNow(id) : id);
  return {
    ...record,
    facts: renamedKeys(record.facts, (fact) => [inCaseNow(fact)]),
    log: fieldsIn(record.log, (entry) => ({
      ...entry,
      ...('check' in entry ? { check: one(entry.check) } : {}),
      ...('cause' in entry ? { cause: one(entry.cause) } : {}),
    })),
  };
}

/** A record of version 5, whose checks, symbols and places had other names. */
export function underNamesOfToday(record: Raw): Raw {
  if (record.type === 'reading' || record.type === 'draft') return ofCheck(record);
  if (record.type === 'case') return ofCase(record);
  if (record.type !== 'machine') return record;
  const { intervals } = record;
  return {
    ...record,
    values: renamedKeys(record.values, placesNow),
    choices: renamedKeys(record.choices, placesNow),
    ...(intervals === undefined ? {} : { intervals: renamedKeys(intervals, (check) => [checkNow(check)]) }),
  };
}
