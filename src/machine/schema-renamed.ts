import { checkNow, placesNow, symbolsNow } from '../reference/renamed';
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

function ofCheck(record: Raw): Raw {
  const check = typeof record.calculator === 'string' ? checkNow(record.calculator) : '';
  const now: Names = (symbol) => symbolsNow(check, symbol);
  const one = (symbol: unknown) => (typeof symbol === 'string' ? now(symbol)[0] : symbol);
  const { order } = record;
  return {
    ...record,
    ...(check === '' ? {} : { calculator: check }),
    ...('entries' in record ? { entries: renamedKeys(record.entries, now) } : {}),
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

/** A record of version 5, whose checks, symbols and places had other names. */
export function underNamesOfToday(record: Raw): Raw {
  if (record.type === 'reading' || record.type === 'draft') return ofCheck(record);
  if (record.type !== 'machine') return record;
  const { intervals } = record;
  return {
    ...record,
    values: renamedKeys(record.values, placesNow),
    ...(intervals === undefined ? {} : { intervals: renamedKeys(intervals, (check) => [checkNow(check)]) }),
  };
}
