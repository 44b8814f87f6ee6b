import { lower } from './inside';

/** The words of the case report. */
const paper = {
  sheet: {
    title: 'Case report',
    link: 'Case report, to print or send',
    print: 'Print',
    send: 'Send as text',
    copy: 'Copy the text',
    save: 'Save the text',
    notSent: 'This phone did not take the text. Copy it instead.',
    copied: 'The text is copied.',
    notCopied: 'This browser does not let the text be copied. Save it as a file instead.',
    file: (day: string) => `trammel-case-${day}.txt`,
    head: (machine: string, owner: string, opened: string) =>
      [machine, owner === '' ? '' : `asked by ${owner}`, opened].filter((part) => part !== '').join(', '),
    parts: {
      complaint: 'Complaint',
      facts: 'What is known of the machine',
      suspected: 'Still suspected',
      found: 'What was found',
      measured: 'How it was measured',
      done: 'What was done',
      ended: 'How it ended',
      next: 'What to do next',
    },
    unplugged: {
      heat: 'This complaint can come from something that burns. It stays unplugged until a step says otherwise; mains parts are for a qualified person.',
      shock:
        'This complaint can come from something that gives a shock. It stays unplugged until a step says otherwise; mains parts are for a qualified person.',
    },
    fact: (question: string, holds: boolean) => `${question} ${holds ? 'Yes.' : 'No.'}`,
    cause: (cause: string, part: string) => `${cause}. Part: ${part}.`,
    suspect: (cause: string, odds: string, percent: string) => `${cause}: ${odds} (${percent})`,
    looked: (time: string, check: string, answer: string, note: string) =>
      `${time}. ${check}: ${lower(answer)}.${note === '' ? '' : ` ${note}`}`,
    done: (time: string, what: string, said: string) => `${time}. ${what}: ${said}.`,
    verdict: (verdict: string, headline: string) =>
      headline === '' ? verdict.toLowerCase() : `${verdict.toLowerCase()}. ${headline}`,
    number: (check: string, line: string) => `${check}: ${line}`,
    ended: (how: string, time: string, proof: string) => `${how}, ${time}. ${proof}`,
    check: (title: string, takes: readonly string[]) => `${title} (${takes.join(', ')}).`,
    mend: (headline: string, minutes: string) => `${headline} (${minutes}).`,
    proof: (proof: string) => `Proof: ${proof}`,
    prove: (proof: string) => `Prove it: ${proof}`,
    handOver: 'Hand the case to someone else, with this report.',
    keepUnplugged:
      'Keep it unplugged, with a note on the plug, and hand it over to a qualified person, with this report.',
    nothing: 'Nothing for now. If it comes back, open the case again.',
    mind: (risk: string) => `Mind: ${lower(risk)}`,
  },
};

export default paper;
