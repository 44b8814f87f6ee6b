/** Words of kept readings: one, all of a check over time, and what came of a correction. */
const moved = {
  better: (gap: string) => `Better by ${gap}`,
  worse: (gap: string) => `Worse by ${gap}`,
  'no change': (gap: string) => `No nearer and no farther than these readings can tell (${gap})`,
};

const now = {
  within: 'within the limit now',
  'too close': 'whether it is within the limit is too close to call',
  none: 'no limit to hold it against',
  beyond: 'beyond the limit now',
  still: 'still beyond the limit',
};

const en = {
  looking: 'Looking…',
  lookingUp: 'Looking it up…',
  list: { none: 'None kept yet.', more: 'Show more' },
  reading: {
    gone: 'No such reading',
    mayBeRemoved: 'It may have been removed.',
    on: (time: string) => `${time}, on`,
    earlier:
      'Kept by an earlier version of Trammel: its names and limits are today’s, and what that version did not keep (what a model worked out) is not known.',
    expects: (parts: readonly string[]) => `Expected after it: ${parts.join('; ')}.`,
    note: 'Note',
    overTime: 'This check over time',
    remove: 'Remove this reading',
    entered: 'Entered',
    results: 'Results',
    /** "Error across the bed: at most 0.05 mm. Beyond limit." */
    limit: (name: string, least: string | undefined, most: string | undefined, verdict: string) => {
      const ends =
        least !== undefined && most !== undefined
          ? `${least} to ${most}`
          : most !== undefined
            ? `at most ${most}`
            : least !== undefined
              ? `at least ${least}`
              : 'its value was not kept';
      return `${name}: ${ends}. ${verdict}.`;
    },
    notKept: 'not kept, so not known',
    outcome: 'What came of it',
    origins: { typical: 'typical, not measured', nameplate: 'as marked', measured: 'measured' },
    measuredWith: (tool: string) => `measured, ${tool}`,
  },
  check: {
    on: 'on',
    never: 'Never taken on this machine.',
    due: 'Due.',
    take: 'Take it',
    takeAgain: 'Take it again',
    overTime: 'Over time',
    newest: (count: number) => `The newest ${count} readings.`,
    all: 'Show all',
    corrections: 'Corrections, before and after',
    earlier: 'Show earlier ones',
    readings: 'Readings',
    every: 'Taken again every',
    days: 'Days (empty: only when a value it rests on changes)',
    wholeDays: (most: number) => `Whole days from 1 to ${most}, or nothing.`,
  },
  trend: {
    other: 'Result over time',
    another: 'Another result over time',
    none: 'none',
    one: 'One reading so far: a trend needs two.',
    axis: (name: string, unit: string) => `${name}, ${unit}`,
    chart: (name: string, count: number) => `${name}: ${count} readings over time. The table below says the same.`,
    asTable: 'As a table',
    taken: 'Taken',
    value: 'Value',
    limit: 'Limit',
    between: (least: string, most: string) => `${least} to ${most}`,
    atMost: (most: string) => `at most ${most}`,
    atLeast: (least: string) => `at least ${least}`,
    newest: (count: number, all: number) => `The newest ${count} of ${all}.`,
  },
  outcome: {
    notYet: 'Not measured again since: take it once more to see.',
    question: 'Did it work?',
    answers: {
      yes: 'Yes.',
      settled: 'Within the limit now, though by no more than these readings can tell.',
      'in part': 'In part: better, but not surely within the limit.',
      'no change': 'No change that these readings can tell.',
      worse: 'No: worse than before.',
      'not comparable': 'These two readings do not compare: another option or limit was in force.',
    },
    /** @param change with `gap`, how far it moved */
    comparison: (
      name: string,
      before: string,
      after: string,
      change: keyof typeof moved,
      gap: string,
      stands: keyof typeof now,
    ) => `${name}: ${before} before, ${after} after. ${moved[change](gap)}; ${now[stands]}.`,
    changed: (changes: readonly string[]) =>
      `Something else was changed between the two, so the difference is not the correction’s alone. ${changes.join('; ')}.`,
    again: 'Measured again',
    independent: 'The two readings’ errors are taken as independent.',
  },
};
export default en;
