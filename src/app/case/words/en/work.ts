import { lower } from './inside';

/** The words for what is to be done: the step, why it comes next, its mend and its proof. */
const work = {
  step: {
    title: 'Next step',
    overruled: (proposed: string) => `You chose this instead of: ${lower(proposed)}.`,
    back: 'Back to what is proposed',
    names: {
      safe: 'Switch off and unplug',
      mend: (headline: string) => `Mend: ${lower(headline)}`,
      handOver: 'Hand the case to someone else',
      proof: 'Prove the mend',
    },
  },
  safe: {
    hazard: {
      heat: 'This complaint can come from something that burns.',
      shock: 'This complaint can come from something that gives a shock.',
    },
    stop: 'Do not go on looking while it is under power.',
    /** Of the keys below, for who hears the screen. */
    ask: 'Is it off, and without power?',
    ticks: {
      done: 'Done: off and unplugged',
      'will do': 'Not yet: it will be done',
      cannot: 'It cannot be done',
    },
    box: (tick: string) => `☐ ${tick}`,
    waits: 'It will be done. The case goes on when it is done.',
    send: 'Send it to whoever stands beside the machine',
  },
  stop: {
    title: 'Stop',
    asked: (owner: string) => `Asked by ${owner}.`,
    back: 'Send it back, with what was ticked',
    after: {
      done: 'Done. The case can be opened now.',
      'will do': 'Not yet. The case can be opened; it goes on when it is done.',
      cannot:
        'It cannot be done: keep away, and hand it over to a qualified person. The case keeps everything that needs power back.',
    },
    /** In place of the list of complaints. */
    first: 'Tick what is true before you go on. If the words mean something harmless, say it in other words.',
    only: 'These words tell of a danger: it comes first. What else is wrong gets a case of its own later.',
    other: 'This complaint looks for no danger. Pick one of those below.',
  },
  check: {
    kicker: (kind: string, minutes: string, tools: readonly string[]) =>
      `Next: ${kind}, ${minutes}, ${tools.length > 0 ? tools.join(', ') : 'no tools'}`,
    kinds: { calculator: 'measure', look: 'look', listen: 'listen', feel: 'feel', do: 'try' },
    powered: 'This check needs power: plug in for it alone, stay beside it, and unplug again after it.',
    open: (title: string) => `Open the check: ${title}`,
    comesBack: 'The reading saved there comes back as the answer.',
    without: 'Answer without the check',
    skip: 'Skip this check',
  },
  reading: {
    of: (time: string, verdict: string) => `Reading of ${time}: ${verdict.toLowerCase()}.`,
    which: 'Which of these does it show?',
    take: 'Take it as the answer',
  },
  why: {
    title: 'Why this next',
    /** Which causes a check tells apart: at least one, and how many more there are. */
    tells: (causes: readonly string[], more: number) => {
      const names = causes.map((cause) => `“${lower(cause)}”`);
      const all = names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;
      return `Its answer says most about ${all}${more > 0 ? ` (and ${more} more)` : ''}.`;
    },
    tryIt: (odds: string) => `This fault is now ${odds}: trying the mend costs less than making surer first.`,
    takes: (minutes: string) => `With this first, the case should take about ${minutes} more, mend and all.`,
    asGood: (step: string, minutes: string) => `As good: ${lower(step)} (about ${minutes}). Take whichever is handier.`,
    after: (answer: string, chance: string, odds: string, cause: string) =>
      `“${answer}” (${chance}): then most suspected, ${odds}: ${lower(cause)}.`,
    sources: (suspicion: string, order: readonly string[]) =>
      `Shares, minutes and prices are common practice, no source. Suspicion by ${suspicion}; order by ${order.join('; ')}.`,
  },
  others: {
    title: 'Something else instead',
    minutes: 'Minutes to the end of the case that are to be expected with each of them first.',
    all: (count: number) => `Show all ${count}`,
    withheld: (steps: readonly string[]) =>
      `Held back because they, or trying them, need power: ${steps.join('; ')}. They come when everything that could burn or give a shock was looked at unplugged, or replaced.`,
  },
  askOther: {
    kicker: 'What is left',
    title: 'Ask someone else',
    unplugged: {
      title: 'Keep it unplugged, and hand it over to a qualified person',
      how: 'Leave it without power, with a note on the plug. Print or send the report, and hand both to a qualified person.',
      /** What was not cleared. */
      unseen: (causes: readonly string[]) =>
        `Not looked at unplugged, or not so that it said anything: ${causes.map(lower).join('; ')}.`,
      found: (causes: readonly string[]) => `Found, and not mended: ${causes.map(lower).join('; ')}.`,
      unlisted: 'The words of the complaint tell of a danger that this case does not look for: begin a case about it.',
      cannot: 'It could not be switched off and unplugged.',
      freed: 'What was skipped or answered in doubt can be taken back in the log, once it can be looked at.',
      done: 'It is off and unplugged now',
    },
    how: 'Nothing on the list is worth more of your time now. What is left is unlikely, or needs hands or tools that are not here. Print or send the report of what was found, then end the case below as handed over. A check that was skipped or answered in doubt can be taken back in the log.',
  },
  mend: {
    kicker: (minutes: string, parts: string | undefined) =>
      `Next: mend, ${minutes}, ${parts === undefined ? 'no parts' : `parts about ${parts}`}`,
    suspected: (cause: string) => `Suspected: ${cause}.`,
    part: (part: string) => `Part: ${part}.`,
    cold: 'Switched off and unplugged, unless a step says otherwise; hot parts cold to the hand.',
    amount: (check: string) => `By how much: ${check}`,
    ask: 'Did it cure the complaint?',
    proof: (proof: string) => `Try the machine as it failed. Proof: ${proof}`,
    cured: 'Yes, it is gone',
    not: 'No, still there',
    replace: 'Replace it instead',
    repair: 'Repair it after all',
  },
  ways: {
    title: 'Repair or replace',
    mend: 'Repair',
    replace: 'Replace',
    minutes: 'min',
    parts: 'parts',
    total: 'total',
    note: 'Total: parts, and minutes at your hour’s worth, in your own money. Times and prices are rough typicals.',
    alike:
      'Total: parts, and minutes at your hour’s worth, in your own money. Times and prices are rough typicals. The totals are alike at these rough prices: choose by the risk.',
    worth: 'An hour of mine is worth',
    typical: (worth: number) =>
      `Typical ${worth}, in your own money. Remembered until this page is closed. The order of the checks counts it too.`,
    bad: (from: number, to: number, worth: number) =>
      `Give a number from ${from} to ${to}; until then ${worth} counts.`,
  },
  proof: {
    kicker: 'Last step',
    again: (check: string) => `Measure it again: ${check}`,
    none: 'No reading was saved on this machine since the mend.',
    readings: 'The reading after',
    reading: (check: string, verdict: string) => `${check}: ${verdict.toLowerCase()}`,
    words: 'What it shows, in a sentence',
    ask: 'What shows that it is cured? Pick a reading, add a photo of the reprint, or say it in a sentence.',
    /** Kept with the case as its proof. */
    seePhoto: 'See the photo of the reprint.',
    close: 'Close the case',
  },
};

export default work;
