import { RuleTester } from 'eslint';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import typescript from 'typescript';
import tseslint from 'typescript-eslint';
import { afterAll, describe, it } from 'vitest';
import house from '../../build/words-rule.js';

RuleTester.describe = describe;
RuleTester.it = it;

const rule = house.rules!['no-words-in-logic']!;

const tester = new RuleTester({
  languageOptions: { parser: tseslint.parser, parserOptions: { ecmaFeatures: { jsx: true } } },
});

/** One fault each, told with the place and the text. */
const fault = (code: string, place: string, text: string) => ({
  code,
  errors: [{ messageId: 'logic', data: { place, text } }],
});

tester.run('no words in logic', rule, {
  valid: [
    '<p>{say.done} ± {value}%</p>',
    '<text>R</text>',
    '<text>0 dB</text>',
    '<p aria-label={say.title} class="bench-line open-now" d="Move to Line" data-kind="too close" />',
    '<path d={`M ${x} ${y} L ${x} 0`} transform={`rotate(${a} ${x} 0)`} />',
    '<p aria-label={kind === "too close" ? say.close : say.other}>{kind === "not read" && say.none}</p>',
    'import say from "./words of a room/en"; export * from "./some other"; const room = import("./a room/en");',
    'throw new RangeError(`the step ${n} is not there`);',
    'throw new DOMException("no room left", "QuotaExceededError");',
    'class Lost extends Error { constructor() { super("it is lost"); } }',
    'console.warn("this is odd", n);',
    'matchMedia("(prefers-color-scheme: dark) and (min-width: 10em)"); page.querySelector("main section p");',
    'switch (state) { case "too close": break; }',
    'if (state === "too close" || "not read" in found) go();',
    'type State = "within" | "too close"; const names: Record<"too close", string> = { "too close": say.close };',
    'const x = rows["too close"]; const y = { kind: "make safe", type: "handed over" };',
    'formula("h_t = P_h times z or max(ab, cd)", say.height);',
    'cite("Handbook of Screws, second edition", say.place);',
    'new Blob([text], { type: "text/plain; charset=utf-8" }); const mime = "text/csv; charset=utf-8";',
    'el.className = "wide open"; el.setAttribute("class", "wide"); el.textContent = say.done; document.title = title;',
    'const row = [n, m].join(" "); const key = "line ".length + n; const id = { key: "Enter", text: say.ok };',
    '<Fold head={say.more} icon="plus" when={key === "Enter"} />',
    'const chosen = "d-ink d-fill"; const box = "[data-line] input of it"; const json = `"made": ${time}`;',
    'const picture = address.startsWith("data:image/jpeg;base64,"); const slope = `${n}\\u00a0mm/m`;',
    'const markup = `<mi mathvariant="normal">R</mi><mn>${n}</mn>`; const rest = "a = b"; const key = `${a}:${b}`;',
  ],
  invalid: [
    fault('<p>Keep it</p>', 'the page', 'Keep it'),
    fault('<p>Keep</p>', 'the page', 'Keep'),
    fault('<p>{open() ? "Close" : say.open}</p>', 'the page', 'Close'),
    fault('<p>{n > 1 && `${n} turns`}</p>', 'the page', '… turns'),
    fault('<button aria-label="Less" />', 'aria-label', 'Less'),
    fault('<button title={ok ? "Fine" : say.bad} />', 'title', 'Fine'),
    fault('<input placeholder={`From ${n}`} />', 'placeholder', 'From …'),
    fault('<Fold label="Limits" />', 'label', 'Limits'),
    fault('<Fold head="More about it" />', 'logic', 'More about it'),
    fault('<Fold head="More" />', 'logic', 'More'),
    fault('<Fold head={"More"} />', 'logic', 'More'),
    fault('<meter aria-valuetext="Half" />', 'aria-valuetext', 'Half'),
    fault('<a download="readings" />', 'download', 'readings'),
    fault('const text = "Keep it";', 'logic', 'Keep it'),
    fault('const text = "Keep\\u00a0it";', 'logic', 'Keep\u00a0it'),
    fault('const text = `${n}\\u202fturns`;', 'logic', '…\u202fturns'),
    fault('const head = "Name;Unit;Value";', 'logic', 'Name;Unit;Value'),
    fault('const text = "saved " + name;', 'logic', 'saved …'),
    fault('const text = name + " of " + n + " turns";', 'logic', '… of … turns'),
    fault('const text = ["Leave", "it"].join(" ");', 'logic', 'Leave it'),
    fault('document.title = "Readings";', 'title', 'Readings'),
    fault('el.textContent = ok ? "saved" : say.bad;', 'textContent', 'saved'),
    fault('el.setAttribute("aria-label", "close");', 'aria-label', 'close'),
    fault('alert("saved");', 'alert', 'saved'),
    fault('pen.fillText("bed", 0, 0);', 'fillText', 'bed'),
    fault('navigator.share({ title: "Reading", url });', 'logic', 'Reading'),
    fault('if (confirm("Delete it?") === true) go();', 'confirm', 'Delete it?'),
    fault('if (ask("Delete it?") === true) go();', 'logic', 'Delete it?'),
    fault('const x = { kind: told("Leave it") };', 'logic', 'Leave it'),
    fault('const text = "[optional] leave it";', 'logic', '[optional] leave it'),
    fault('const text = `Saved ${name}.`;', 'logic', 'Saved ….'),
    fault('const text = `${n} (about) teeth`;', 'logic', '… (about) teeth'),
    fault('return_("Leave a gap");', 'logic', 'Leave a gap'),
    fault('const labels = { within: "within its limit" };', 'logic', 'within its limit'),
    fault('refuse("Enter: a number.");', 'logic', 'Enter: a number.'),
    fault('const say_ = (n) => n === 1 ? "one part" : `${n}`;', 'logic', 'one part'),
    fault('find("a b c of it").then(() => { throw new Error("not found at all"); });', 'logic', 'a b c of it'),
  ],
});

/** Files of their own with types and no library, so that no whole project is read for two lines. */
const folder = mkdtempSync(join(tmpdir(), 'words-rule-'));
afterAll(() => rmSync(folder, { recursive: true }));

function written(name: string, code: string): { filename: string; code: string } {
  const filename = join(folder, name);
  writeFileSync(filename, code);
  return { filename, code };
}

const few = written('few.ts', 'const f = (n: number): "within" | "too close" => (n > 1 ? "within" : "too close");');
const any = written('any.ts', 'const f = (): string => "too close";');

const typed = new RuleTester({
  languageOptions: {
    parser: tseslint.parser,
    parserOptions: {
      programs: [typescript.createProgram([few.filename, any.filename], { noLib: true, strict: true })],
      tsconfigRootDir: folder,
    },
  },
});

typed.run('no words in logic, where the types allow a few strings only', rule, {
  valid: [few],
  invalid: [{ ...any, errors: [{ messageId: 'logic', data: { place: 'logic', text: 'too close' } }] }],
});
