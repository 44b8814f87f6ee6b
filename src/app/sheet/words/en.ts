/** Words of the screen of a check. */
const en = {
  screen: {
    ofCase: 'what the case says of this check',
    what: 'the check',
    unknown: 'No such check',
    all: 'All checks',
  },
  cautions: { title: 'Before you touch it' },
  folds: {
    limits: 'Limits',
    workings: 'Formulas, numbers put in, doubt',
    ask: 'The other way round',
    beware: 'What this cannot tell',
    handOver: 'Hand this check over',
    examples: 'Worked examples',
  },
  readings: {
    title: 'Readings',
    seldom: (count: number) => `Seldom changed (${count})`,
    optional: 'optional',
    useAs: (label: string) => `Use as: ${label}`,
    clear: 'Clear all entries',
    asked: 'This entry and another cannot both be right: see the question below.',
    elsewhere: (text: string) =>
      text === ''
        ? 'Another tab has cleared this. It is cleared here when you leave it as it is.'
        : `Another tab has ${text} here. It is taken when you leave this as it is.`,
    earlier: (value: string, day: string) => `Before: ${value} (${day})`,
  },
  signs: { which: (label: string) => `Which way: ${label}` },
  putBack: 'Put my numbers back',
  origin: {
    blank: 'to be measured',
    entered: 'entered',
    machine: 'machine',
    typical: 'typical',
    marked: 'as marked',
    /** "machine, caliper, ± 0.030 mm" */
    parts: (parts: readonly string[]) => parts.join(', '),
  },
  tools: {
    readWith: (tool: string) => `read with: ${tool}`,
    marked: 'as marked, or as set',
    typed: 'otherwise: ± as typed',
  },
  arrival: {
    cameWithLink: 'These numbers came with a link.',
    otherMachine: (machine: string) => `They are of another machine: ${machine} is off the bench, with all it keeps.`,
    machineBack: (machine: string) => `Put ${machine} back`,
  },
  bar: {
    title: 'Verdict and instruction',
    verdict: 'Verdict',
    word: (verdict: string) => `${verdict}.`,
    doubt: (percent: number, name: string) => `Most of the doubt (${percent} %) is in: ${name}.`,
    measureTypical: 'That is still a typical value: measure it on this machine.',
    settle: (tool: string) => `A ${tool} would settle it.`,
    /** Keys that go to what is asked about, or cannot be used. */
    goTo: (label: string) => `Go to: ${label}`,
    /** What is to be read once the order is done. */
    expect: (parts: readonly string[]) => `After it, expect: ${parts.join('; ')}.`,
    expected: (name: string, value: string) => `${name} ${value}`,
    customDiffers: 'The trade does not agree on that limit: enter the one you hold yours to.',
    noTool: 'No better tool on the list settles it alone: measure the others better too, or repeat the reading.',
    wouldSettle: (half: string) =>
      `A reading of it to ± ${half} would settle it; no tool on the list reads it so finely.`,
    fold: 'Fold',
    steps: 'How, step by step',
    proof: 'Proof.',
    restsOn: (names: readonly string[]) => `Rests on typical values: ${names.join('; ')}.`,
  },
  keeper: {
    keep: 'Save reading',
    again: 'Measure again',
    which: 'Which machine is this reading of?',
    kept: (machine: string, time: string) => `Saved on ${machine}, ${time}.`,
    passing: (machine: string) =>
      `With ${machine} for as long as this page stays open. Save or write down what you need.`,
    elsewhere: 'Another tab has entered other numbers since.',
    past: 'Saved for this machine',
  },
  ask: {
    wanted: 'I want the result',
    toBe: 'to be',
    byChanging: 'by changing',
    putIn: 'Put it in',
    missing: (names: readonly string[]) => `Still needed: ${names.join(', ')}.`,
    noResult: (input: string, low: string, high: string, result: string) =>
      `No ${input} from ${low} to ${high} gives any ${result}.`,
    outOfReach: (input: string, [low, high]: readonly [string, string], result: string, least: string, most: string) =>
      `No ${input} from ${low} to ${high} gives that: over this range the ${result} runs from ${least} to ${most}.`,
    /** All values from one to the other. */
    between: (low: string, high: string) => `${low} to ${high}`,
    more: (usual: string) => `Others give it too: these are the nearest to ${usual}.`,
    whole: 'Only a whole number can be had: take the nearest and look at the result.',
  },
  workings: {
    methods: {
      exact: '',
      'first order': 'Uncertainty to first order (JCGM 100). Shares:',
      'second order': 'Uncertainty to second order (JCGM 100, note to 5.1.2). Shares:',
      sampled: 'Curved here: uncertainty by sampling (JCGM 101). Shares, about:',
    },
    notKnown: 'Not known yet.',
    limitFrom: (source: string) => `Limit: ${source}`,
  },
  examples: { putIn: 'Put these numbers in' },
  share: {
    what: 'The link opens this check with these numbers on another phone, which needs no machine for it. The numbers stand in the link itself: no server gets them.',
    onPaper: 'On paper: one card with the cautions, the drawing, the steps and the numbers.',
    print: 'Print this check',
  },
  card: {
    /** "Left bench, 3 March 2026" */
    of: (machine: string | undefined, day: string) => (machine === undefined ? day : `${machine}, ${day}`),
    /** What a result is held against, and where that comes from. */
    against: (limit: { min: string | undefined; max: string | undefined; symmetric: boolean; source: string }) => {
      const ends = [
        ...(limit.min === undefined ? [] : [`at least ${limit.min}`]),
        ...(limit.max === undefined ? [] : [`at most ${limit.max}`]),
      ].join(', ');
      return `${ends}${limit.symmetric ? ' either way' : ''}; ${limit.source}`;
    },
    steps: 'Steps',
    proof: 'Proof',
  },
};

export default en;
