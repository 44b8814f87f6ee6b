import type { Letter } from '../../diagnosis/link';
import { sameEntry, standing, type Standing } from '../../diagnosis/same';
import { restore, type Case } from '../../machine/schema';
import { VERSION } from '../../machine/version';
import say from './words/en';

const differ = (a: unknown, b: unknown): boolean => JSON.stringify(a) !== JSON.stringify(b);

const sortedFacts = (facts: Case['facts']) => Object.entries(facts).sort(([a], [b]) => (a < b ? -1 : 1));

/** How a case that came with a link stands to ours: with the same log, what is known or how it ended may still differ. */
export function letterStanding(ours: Case, letter: Letter): Standing {
  const logs = standing(ours.log, letter.log);
  if (logs !== 'same') return logs;
  const ended = ours.closed && { at: ours.closed.at, how: ours.closed.how, proof: ours.closed.proof };
  if (ours.closed !== null && letter.closed === null) return 'ours goes on';
  const changed = differ(sortedFacts(ours.facts), sortedFacts(letter.facts)) || differ(ended, letter.closed);
  return changed ? 'theirs goes on' : 'same';
}

/**
 * The case of a link as one of this machine, or one sentence why it cannot be kept. What ours has of the same entries stays:
 * the readings they rest on do not travel in a link.
 */
export function caseOf(letter: Letter, machine: string, ours: Case | undefined, now: Date): Case | string {
  const log = letter.log.map((entry) => ours?.log.find((one) => sameEntry(one, entry)) ?? entry);
  const restored = restore({
    v: VERSION,
    type: 'case',
    id: letter.id,
    machine,
    symptom: letter.symptom,
    owner: letter.owner,
    complaint: letter.complaint,
    opened: letter.opened,
    changed: now.toISOString(),
    ordinal: ours?.ordinal ?? 0,
    ...(ours?.since === undefined ? {} : { since: ours.since }),
    facts: letter.facts,
    log,
    closed: letter.closed,
  });
  if (!restored.ok) return restored.reason;
  return restored.record.type === 'case' ? restored.record : say.arrival.noCase;
}
