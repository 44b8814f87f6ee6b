/**
 * One name for one thing: what the app calls it, and what it does not. A plain word stands for itself and its inflected
 * forms, as whole words; a pattern says where a word of two meanings is the wrong one. Search words and what people say are
 * exempt (test/support/words.ts).
 */
export interface Thing {
  readonly name: string;
  readonly not: readonly (string | RegExp)[];
}

export const things: readonly Thing[] = [
  { name: 'filament; extruded thread; run of a belt', not: ['strand'] },
  { name: 'span of a belt', not: [/\b(free|same|long|longest) stretch\b|\bstretch of (the |a |both )?belts?\b/i] },
  { name: 'feeder', not: ['extruder', 'filament drive', 'feed drive'] },
  { name: 'feed gear', not: ['drive gear', 'feeder gear', 'hob', /feeder’s gear/i] },
  { name: 'retraction', not: ['pull-back', /pull(s|ed|ing)? back\b/i] },
  {
    name: 'travel (of what moves); deflection (of what gives)',
    not: [
      /^way (of|the|that)\b/i,
      /\bwhole way\b/i,
      /\bway (over|travelled|taken)\b|(×|by) the way\b|× way\b|\bno way to fall\b/i,
      /\bon its way\b|\btakes up once its way\b/i,
    ],
  },
  { name: 'depends on', not: [/\bhang(s|ing)? on\b/i] },
  { name: 'work out', not: ['reckon', 'reckoning'] },
  { name: 'cover', not: ['hood', 'cupboard', 'chamber', 'enclosure'] },
  { name: 'feeler', not: ['feeler gauge', 'feeler leaf', 'leaf', /\b(a|the|of) leaves\b/i] },
  {
    name: 'save to a file; read a file in',
    not: ['export', /\btak(e|en|ing) (it |a file )?in\b(?! (five|the same|at))/i, /make the file/i],
  },
  {
    name: 'Save reading',
    not: [/\bkeep(s|ing)? (the |this |a )?reading\b(?!s)/i, /\breading (you|was|is) kep[t]?/i, /\breading you keep\b/i],
  },
  { name: 'limit switch', not: ['end stop', 'endstop', 'end switch'] },
  {
    name: 'check (on the screen), card (of a machine), case report',
    not: [/\b(the|this|clear the|bench|one|back to the) sheet\b(?! (metal|taped|of (glass|card|paper|metal)))/i],
  },
  {
    name: 'heater guard: reaction time, lag allowed, rise wanted',
    not: ['watchdog', 'hysteresis', 'runaway', /guard’s window/i],
  },
  { name: 'Two Z screws in step; joining belt', not: ['dual-z', 'sync', 'synced'] },
  { name: 'the foot bulges', not: ['elephant', 'elephant foot'] },
  { name: 'binding length', not: [/\btwo to one\b/i, /\b2 ?: ?1\b/] },
  {
    name: 'first belt, second belt; left motor, right motor',
    not: [/\(X, or A\)|\(Y, or B\)|\((X )?or A\)|\((Y )?or B\)/],
  },
  { name: 'detent torque', not: ['idle torque', 'cogging torque', 'cogging'] },
  { name: 'rim', not: ['brim', 'raft', 'skirt'] },
  { name: 'dial indicator', not: ['dial gauge', 'clock gauge', 'DTI'] },
  { name: 'anticlockwise', not: ['counterclockwise', 'counter-clockwise'] },
  { name: 'heater block', not: ['heat block'] },
  { name: 'rule', not: ['ruler'] },
  { name: 'adjuster', not: ['levelling screw', 'leveling knob', 'bed knob'] },
  { name: 'bed', not: ['build plate', 'buildplate', 'platform', 'heatbed'] },
  { name: 'nozzle, hot end', not: ['hotend', 'print head', 'printhead', 'tool head'] },
  { name: 'levelling plan', not: ['bed mesh', 'height map', 'mesh'] },
  { name: 'can crush a finger', not: [/\bpinch(es)?\b/i, /takes (a|the) finger (in|along)/i] },
];

const inflected = (word: string): RegExp => new RegExp(`(?<![\\p{L}-])${word}(s|’s|es|ed|ing)?(?![\\p{L}])`, 'iu');

const patterns = things.flatMap(({ name, not }) =>
  not.map((what) => ({ name, find: typeof what === 'string' ? inflected(what) : what })),
);

/** What of a text is another name for a thing that has one: the words found, and the name. */
export const otherNames = (text: string): readonly { readonly found: string; readonly name: string }[] =>
  patterns.flatMap(({ name, find }) => {
    const found = find.exec(text);
    return found ? [{ found: found[0], name }] : [];
  });
