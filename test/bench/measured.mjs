// Writes what a bench measured into its block of DEVELOPERS.md, with the day and the machine, so that nobody does by hand.
import { cpus } from 'node:os';
import { readFileSync, writeFileSync } from 'node:fs';
import { format, resolveConfig } from 'prettier';

const FILE = process.env.MEASURED_FILE ?? 'DEVELOPERS.md';

/** Rows as a Markdown table; `|` in a cell is escaped. */
export const table = (head, rows) =>
  [head, head.map(() => '---'), ...rows]
    .map((row) => `| ${row.map((cell) => String(cell).trim().replaceAll('|', '\\|')).join(' | ')} |`)
    .join('\n');

const day = (date) => date.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });

function machine() {
  const all = cpus();
  return `${all.length} cores (${all[0]?.model.trim().replace(/\s+/g, ' ') ?? 'unknown'}), Node ${process.versions.node}`;
}

/**
 * Puts `body` (Markdown) between `<!-- measured:name -->` and the next `<!-- /measured -->`, in place of what was there.
 *
 * @param command what was run, so that anybody can run it again
 * @throws where the file has no such block
 */
export async function writeMeasured(name, command, body) {
  const text = readFileSync(FILE, 'utf8');
  const begin = `<!-- measured:${name} -->`;
  const from = text.indexOf(begin);
  const to = text.indexOf('<!-- /measured -->', from);
  if (from < 0 || to < 0) throw new Error(`${FILE} has no block ${begin} … <!-- /measured -->: add it`);
  const block = `${begin}\n\nBy \`${command}\`, ${day(new Date())}, ${machine()}.\n\n${body.trim()}\n\n`;
  const whole = text.slice(0, from) + block + text.slice(to);
  writeFileSync(FILE, await format(whole, { ...(await resolveConfig(FILE)), parser: 'markdown' }));
  process.stdout.write(`Written into ${FILE}: measured:${name}\n`);
}
