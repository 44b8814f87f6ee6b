import type { AnswerId, CauseId, InspectionId, FactId } from '../../src/diagnosis/types';

/*
 * Twenty cases from the repair workshop of a small town, all invented: complaint, machine, truth, and what the machine would
 * answer to each check that might be asked. Written before any was run. A check that a case does not name answers as a sound
 * machine would: no, within, or whatever its most likely answer is for an unlisted fault. Four cases hold an unlucky answer,
 * marked so: the machine misleads.
 */
export interface WrittenCase {
  readonly name: string;
  readonly complaint: string;
  readonly symptom: string;
  readonly facts: Readonly<Record<FactId, boolean>>;
  readonly truth: CauseId;
  readonly answers: Readonly<Record<InspectionId, AnswerId>>;
}

export const writtenCases: readonly WrittenCase[] = [
  {
    name: 'the baker’s cutter moulds',
    complaint:
      'Since the machine came back from the trade fair every tall mould has rings round it, all the same distance apart.',
    symptom: 'ridges-regular',
    facts: { 'just-moved': true, 'new-build': false, 'layer-changed': false, 'belt-z': false },
    truth: 'screw-bent',
    answers: { 'ridge-spacing': 'screw', 'screw-top': 'yes', 'screw-run-out': 'beyond', 'top-freed': 'no' },
  },
  {
    name: 'the model railway club',
    complaint:
      'We went to 0.15 mm layers for the station roof and now there are fine ribs up the walls at an even distance.',
    symptom: 'ridges-regular',
    facts: { 'layer-changed': true, 'just-moved': false, 'belt-z': false },
    truth: 'layer-off-step',
    answers: { 'ridge-spacing': 'step', 'step-fit': 'beyond' },
  },
  {
    name: 'the school’s lamp shades',
    complaint: 'The walls look rough, single layers stick out, no pattern. It has been running for three years.',
    symptom: 'ridges-irregular',
    facts: { 'many-hours': true, 'grooved-wheels': true, 'new-filament': false, 'open-filament': false },
    truth: 'wheels-loose',
    answers: { 'rock-carriage': 'yes', 'wheel-slip': 'beyond', 'gantry-lift': 'yes' },
  },
  {
    name: 'the cheap grey spool',
    complaint: 'New bargain spool, and the surface is uneven all over: thick and thin lines, quite random.',
    symptom: 'ridges-irregular',
    facts: { 'new-filament': true, 'many-hours': false, 'open-filament': false },
    truth: 'filament-uneven',
    answers: { 'filament-caliper': 'yes', 'spool-pull': 'no' },
  },
  {
    name: 'the machine that went upstairs',
    complaint:
      'We carried it to the first floor. Left side of the first layer is squashed, right side hardly sticks. Two screws, one each side.',
    symptom: 'first-layer-side',
    facts: { 'two-z-screws': true, 'just-moved': true, 'bed-moved': false },
    truth: 'sides-unequal',
    answers: { 'ends-level': 'beyond', 'bed-heights': 'tilt' },
  },
  {
    name: 'the borrowed machine',
    complaint: 'My nephew turned the knobs under the bed and now the nozzle scrapes in one corner.',
    symptom: 'first-layer-side',
    facts: { 'bed-moved': true, 'two-z-screws': false, 'just-moved': false },
    truth: 'bed-tilted',
    answers: { 'bed-heights': 'tilt', 'extruded-shape': 'yes' },
  },
  {
    name: 'the shifted vase',
    complaint:
      'At about 60 mm the whole thing jumps to the left and then goes on as if nothing had happened. Belts were off in spring.',
    symptom: 'layers-shifted',
    facts: { 'belts-new': true, 'new-build': false, faster: false, 'warm-place': false },
    truth: 'belt-slack',
    answers: { 'belt-note': 'beyond', 'belts-compared': 'beyond' },
  },
  {
    name: 'the kit from the holidays',
    complaint: 'Put it together at Christmas. The layers step sideways, always in the same direction.',
    symptom: 'layers-shifted',
    facts: { 'new-build': true, 'many-hours': false, faster: false },
    truth: 'pulley-loose',
    // Unlucky: the belt comes out too close to call.
    answers: { 'pulley-hold': 'yes', 'belt-note': 'close' },
  },
  {
    name: 'the cellar spool',
    complaint: 'Cobwebs between all the clips. The spool hung in the cellar since summer.',
    symptom: 'hairs',
    facts: { 'open-filament': true, 'damp-room': true, hotter: false, 'nozzle-changed': false },
    truth: 'filament-damp',
    answers: { hiss: 'yes', moisture: 'beyond' },
  },
  {
    name: 'the fine nozzle',
    complaint: 'I changed to a 0.25 mm nozzle and now there are whiskers from one pin to the next.',
    symptom: 'hairs',
    facts: { 'nozzle-changed': true, 'tube-feed': true, 'open-filament': false },
    truth: 'retraction-short',
    answers: { 'retraction-length': 'beyond' },
  },
  {
    name: 'the chess set',
    complaint: 'The bishops come out wavy near the top, the rooks are perfect.',
    symptom: 'slender-wobbles',
    facts: { 'tall-part': true, faster: false },
    truth: 'part-sways',
    answers: { column: 'beyond', 'two-at-once': 'no', 'foot-size': 'yes' },
  },
  {
    name: 'the plant labels',
    complaint: 'The corners come up after an hour. I always press the plate to see whether it is warm.',
    symptom: 'lets-go',
    facts: { 'bed-touched': true, 'open-window': false, 'bed-moved': false, 'tall-part': false },
    truth: 'bed-greasy',
    answers: { 'water-film': 'yes' },
  },
  {
    name: 'the window workshop',
    complaint: 'The whole box came loose. It stands at the open window because of the smell.',
    symptom: 'lets-go',
    facts: { 'open-window': true, 'bed-touched': false, 'cold-room': true },
    truth: 'draught',
    // Unlucky: water beads on a clean plate.
    answers: { 'paper-strip': 'yes', 'water-film': 'yes' },
  },
  {
    name: 'the knob of the sewing machine',
    complaint: 'The screw in the plastic bracket turns and turns, the brass thing in the hole turns with it.',
    symptom: 'screw-spins',
    facts: { 'printed-holes': true, overtightened: false },
    truth: 'insert-turns',
    answers: { 'thread-look': 'insert' },
  },
  {
    name: 'the head that comes down overnight',
    complaint: 'In the morning the head lies on the bed. It has steep screws that I can spin with two fingers.',
    symptom: 'gantry-sinks',
    facts: { 'new-build': true, 'many-hours': false, 'worked-on': false },
    truth: 'screw-runs-back',
    answers: { 'screw-holds': 'beyond' },
  },
  {
    name: 'the smoking hot end',
    complaint: 'After I changed the nozzle it smoked and dripped, and the display said 205.',
    symptom: 'far-too-hot',
    facts: { 'nozzle-changed': true, 'hot-end-changed': false, crashed: false },
    truth: 'sensor-fallen',
    answers: { 'sensor-tug': 'yes', 'heating-curve': 'beyond' },
  },
  {
    name: 'the youth club’s old machine',
    complaint: 'It heats up though it is set to zero. Nothing was changed.',
    symptom: 'far-too-hot',
    facts: { 'hot-end-changed': false, 'nozzle-changed': false, 'many-hours': true, crashed: false },
    truth: 'switch-shorted',
    answers: { 'switch-ohms': 'yes' },
  },
  {
    name: 'the jumping thermometer',
    complaint: 'The temperature jumps by ten degrees when the head is at the back, then it stops with an error.',
    symptom: 'temperature-wanders',
    facts: { 'many-hours': true, 'hot-end-changed': false, 'nozzle-changed': false },
    truth: 'sensor-contact',
    // Unlucky: at rest the sensor measures well.
    answers: { 'sensor-ohms': 'within', 'wire-bend': 'yes', 'plugs-one-by-one': 'yes' },
  },
  {
    name: 'the egg-shaped bearing seats',
    complaint:
      'The bearings do not go in: the holes are longer left to right. Two long belts drive the head, one was replaced.',
    symptom: 'oval-holes',
    facts: { 'crossed-belts': true, 'belts-new': true, 'new-build': false },
    truth: 'belts-unequal',
    // Unlucky: the single belt’s note passes.
    answers: { 'belts-compared': 'beyond', diagonals: 'beyond', 'belt-note': 'within' },
  },
  {
    name: 'the machine that cannot find home',
    complaint: 'After the move it sometimes does not see its end switch; knocking on the case helps.',
    symptom: 'comes-and-goes',
    facts: { 'just-moved': true, 'many-hours': false, 'worked-on': false },
    truth: 'plug-loose',
    answers: { 'plugs-one-by-one': 'yes', 'switch-click': 'no' },
  },
];
