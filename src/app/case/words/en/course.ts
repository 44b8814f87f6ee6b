import { lower } from './inside';

/** The words for a case as it stands: what is suspected, what was done, how it ended. */
const course = {
  screen: {
    bad: 'A case that cannot be read',
    newer: (reason: string) => `${reason} It may come from a newer Trammel: bring this one up to date.`,
    /** Around the machine's name. */
    where: {
      before: 'On ',
      after: (opened: string) => `, opened ${opened}. Nothing of it was changed.`,
    },
    /** After the machine's name. */
    asked: (owner: string, opened: string) => (owner === '' ? `, ${opened}` : `, asked by ${owner}, ${opened}`),
    unplugged: (since: string) =>
      `Unplugged since ${since}. Leave it so, except where a step says that it needs power.`,
    photo: 'Photo of the complaint',
  },
  gone: {
    looking: 'Looking it up…',
    title: 'No such case',
    why: 'It may have been removed, or kept on another device.',
    machine: 'Its machine is no longer there',
  },
  cases: {
    none: 'None yet.',
    looking: 'Looking…',
    ended: (how: string, time: string) => `${how}, ${time}`,
    open: (since: string) => `Open since ${since}`,
    asked: (owner: string) => `asked by ${owner}`,
  },
  odds: {
    under: 'less than 1 in 100',
    sure: 'almost certain',
    about: (part: number, of: number) => `about ${part} in ${of}`,
  },
  percent: {
    under: 'under 1 %',
    over: 'over 99 %',
    whole: (percent: number) => `${percent} %`,
  },
  minutes: (minutes: number) => (minutes === 1 ? '1 minute' : `${minutes} minutes`),
  facts: { title: 'What is known of it', yes: 'Yes', no: 'No', open: 'Not known' },
  suspects: {
    title: 'Still suspected',
    was: 'Was still suspected',
    none: 'Something not listed',
    out: (causes: readonly string[]) => `Nearly or quite out: ${causes.map(lower).join('; ')}.`,
    part: (part: string) => `Part: ${part}. You know that it is not this?`,
    danger:
      'It may burn or give a shock: your word moves the suspicion, but what needs power waits until it was looked at unplugged.',
    certain: 'Rule out for certain',
    fairly: 'Fairly sure it is not',
    mend: 'Go to its mend',
  },
  log: {
    title: 'What was done',
    none: 'Nothing done yet.',
    /** Before what came of it. */
    what: (what: string) => `${what}: `,
    reading: 'The reading',
    change: 'Change',
    changeWhat: (what: string) => `Change: ${what}`,
    back: 'Take back',
    backWhat: (what: string) => `Take back: ${what}`,
    safe: 'Switched off and unplugged',
    confirmed: 'done',
    willDo: 'not yet, will be done',
    cannot: 'cannot be done',
    skipped: 'skipped',
    certain: 'ruled out for certain',
    fairly: 'ruled out, fairly sure',
    cured: 'it cured',
    not: 'it did not cure',
  },
  ends: { cured: 'Mended', replaced: 'Part replaced', 'handed over': 'Handed over', 'given up': 'Given up' },
  closed: {
    title: 'How it ended',
    at: (time: string) => `Closed ${time}`,
    reading: 'The reading after',
    reopen: 'Open it again',
  },
  end: {
    title: 'End without a cure',
    words: 'To whom, or why (may stay empty)',
    handOver: 'End: handed over',
    giveUp: 'End: given up',
    remove: 'Remove this case',
  },
  photo: {
    complaint: 'The complaint',
    before: 'As it came',
    reprint: 'The reprint',
    after: 'After the mend',
    askReprint: 'A photo of the reprint (made smaller and kept on this device)',
  },
};

export default course;
