/** Words of the check “Ridge period”. */
import type { Amount, Print } from '../../../engine/order';
import { parts } from './en/parts';

type Part = keyof typeof parts;
interface WithPeriod {
  readonly part: Part;
  readonly period: Amount;
}
/** How the ridges stand against a part's period. */
interface Off {
  readonly closer: boolean;
  readonly times: Amount | undefined;
  readonly percent: Amount | undefined;
}
/** What would tell two parts apart. */
type Parting = { readonly a: Part; readonly b: Part } & (
  | { readonly kind: 'same' }
  | { readonly kind: 'machine'; readonly symbol: string }
  | { readonly kind: 'period'; readonly half: Amount }
  | { readonly kind: 'spaces'; readonly spaces: number; readonly wall: Amount; readonly tool: string | undefined }
);

const whys = {
  wholeSteps: 'every layer is a whole number of full steps',
  withinTwoLayers: 'it comes round within two layers',
};
const firstUpper = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const lowerFirst = (text: string) => (text.startsWith('Z ') ? text : text.charAt(0).toLowerCase() + text.slice(1));
const list = (names: readonly string[]) =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;
const compared = (count: number) => (count === 1 ? 'one part compared' : `${count} parts compared`);
const withPeriod = ({ part, period }: WithPeriod, p: Print) => `${parts[part].name} (${p(period)})`;
const mismatch = ({ closer, times, percent }: Off, p: Print) =>
  times
    ? `the ridges are ${p(times)} times ${closer ? 'closer' : 'as far apart'}`
    : `the ridges are ${percent ? p(percent) : ''} % ${closer ? 'closer' : 'wider'}`;
const apart = (one: Parting, p: Print) => {
  const pair = `${parts[one.a].name} and ${parts[one.b].name}`;
  switch (one.kind) {
    case 'same':
      return `${firstUpper(pair)} have the same period here: no reading parts them, only the proof by hand below.`;
    case 'machine':
      return `To part ${pair} no reading of the ridges is good enough until this is known better: ${p.called(one.symbol)}.`;
    case 'period':
      return `To part ${pair} the period must be known to ± ${p(one.half)} or better: measure over more ridges.`;
    case 'spaces':
      return `To part ${pair}: measure over ${one.spaces} spaces, a wall of ${p(one.wall)}${one.tool === undefined ? '' : `, or the same length with a ${p.tool(one.tool)}`}.`;
  }
};

const en = {
  inputs: {
    L: {
      label: 'Length over the ridges',
      hint: 'From the crest of one ridge to the crest of another, square to the ridges. Take them as far apart as caliper and wall allow.',
    },
    N: {
      label: 'Spaces between those two crests',
      hint: 'One less than the crests counted. Count twice: one too many shifts the period by a whole space.',
    },
    P_w: {
      label: 'Ridge period on the wall',
      hint: 'From crest to crest. Type its ± behind it where you know it.',
    },
    P_h: {
      hint: 'Lead = pitch × starts: travel of the nut in one turn.',
    },
    n_s: {
      label: 'Starts of the screw',
      hint: 'Threads side by side: count the grooves that end at the screw’s face.',
    },
    d_z: {
      label: 'Diameter of the Z belt’s idler',
      hint: 'What the belt lies on; for a toothed idler over its teeth.',
    },
    d_i: {
      label: 'Idler diameter',
      hint: 'What the belt lies on; for a toothed idler over its teeth.',
    },
    d_g: {
      hint: 'Of the gear that bites the filament, a little less than over its teeth. Or the filament fed in one turn, divided by π.',
    },
    l_L: {
      label: 'Length of line in one layer',
      hint: 'Of the part with the ridges, all walls and filling of one layer added up. A plain wall: its outline, once for each line side by side.',
    },
    t_c: {
      label: 'Heater’s cycle, from on to on',
      hint: 'Time ten swings of the temperature shown, or of the heater’s lamp, and divide.',
    },
    t_L: {
      label: 'Time of one layer',
      hint: 'Of the part with the ridges. Time ten layers and divide.',
    },
    x: {
      label: 'Jaws off the crests, both together',
      hint: 'A crest is round: a jaw finds it to about a tenth. Spread over the spaces, so it shrinks with their number.',
    },
    s: {
      label: 'Shrinkage of the print',
      hint: 'The wall is shorter than the machine moved. Stiff plastics that print near 210 °C shrink about 0.3 %, those that want a warm cover up to 1 %.',
    },
    a: {
      label: 'Belt’s cords above what the idler touches',
      hint: 'The cords set the length. Back of a 2 mm belt: about 0.4 mm. Over a toothed idler: 0.25 mm. Teeth on a smooth idler: about 1 mm.',
    },
    k_A: {
      label: 'Share of width × height that a line fills',
    },
  },
  choices: {
    by: {
      label: 'The ridges are',
      options: {
        count: 'measured over several with a caliper',
        direct: 'a period: from a photo, or typed',
      },
    },
    way: {
      label: 'They run',
      hint: 'Waves: take them on a wall that runs along X or Y, and give the parts of that axis.',
      options: {
        up: 'as rings stacked up the wall',
        along: 'as waves along the wall, upright',
      },
    },
  },
  results: {
    P_m: 'Ridge period as measured',
    P: 'Ridge period as the machine moved it',
    p_lead: 'Screw, one turn',
    p_thread: 'Screw, one thread: its pitch',
    p_motor: 'Z motor, one turn',
    q: 'Travel of one full step',
    p_tooth_zBeltTooth: 'Z belt, one tooth',
    p_tooth_beltTooth: 'Belt, one tooth',
    p_pulley_zPinionTurn: 'Z pinion, one turn',
    p_pulley_motorPulleyTurn: 'Motor pulley, one turn',
    p_idler_idlerZBelt: 'Idler of the Z belt, one turn',
    p_idler_idlerTurn: 'Idler, one turn',
    p_min: 'Shortest spacing that layers can show',
    n: 'Full steps in one layer',
    n_w: 'Nearest whole number of full steps',
    k_odd: 'Odd layers per height, from rounding',
    p_step: 'Motor, one full step',
    p_cycle: 'Motor, four full steps: one cycle of its current',
    p_wheel: 'Guide wheel, one turn',
    A_f: 'Section of the filament',
    V_g: 'Plastic fed in one turn of the gear',
    p_gear_feedGearTurn: 'Feed gear, one turn, in height',
    p_gear_feedGearTurn2: 'Feed gear, one turn, along the line',
    p_heat_heaterCycleHeight: 'Heater, one cycle, in height',
    p_heat_heaterCycleAlong: 'Heater, one cycle, along the line',
    p_day: 'Day and night, in height',
    e_lead: 'Ridges against the turn of the screw',
    e_thread: 'Ridges against the screw’s pitch',
    e_motor: 'Ridges against the turn of the Z motor',
    e_odd: 'Ridges against the odd layers of rounding',
    e_tooth: 'Ridges against the belt’s tooth',
    e_pulley_ridgesAgainstTurn: 'Ridges against the turn of the pinion',
    e_pulley_ridgesAgainstTurn2: 'Ridges against the turn of the pulley',
    e_idler: 'Ridges against the turn of the idler',
    e_step: 'Ridges against one full step',
    e_cycle: 'Ridges against four full steps',
    e_wheel: 'Ridges against the turn of a guide wheel',
    e_gear: 'Ridges against the turn of the feed gear',
    e_heat: 'Ridges against the heater’s cycle',
    e_day: 'Ridges against day and night',
  },
  limits: {},
  cautions: {
    switchOffUnplug:
      'Switch off and unplug before you touch a belt, a screw or a gear: a homing move can crush a finger.',
    supportGantryBed:
      'Block the gantry or bed up before you free a screw’s coupling or belt: it can drop and crush a hand.',
    hotEndStays: 'The hot end burns for a quarter of an hour: let it cool before you reach for the feed gear.',
  },
  proof:
    'Turn the part half a turn against its mate and print the same wall again: the ridges must move by half their spacing, with the part. What cannot be turned is proved by changing what its period depends on: the ridges must change their spacing with it. After the repair print the wall a third time: the ridges are gone.',
  beware: {
    periodAgreesSuspicion:
      'A period that agrees is a suspicion, not a proof: parts are many and periods common. The half turn proves it.',
    onlyPartsListed:
      'Only the parts listed are compared. Bearings, balls of a guide, gears inside a feeder and the room’s heating are not.',
    wavesAfterCorner:
      'Waves after a corner that die away are ringing: their spacing goes with the speed, that of a part does not.',
    wallDoesRun:
      'On a wall that does not run along X or Y a part’s waves are farther apart; on a slanted wall rings are too. Take an upright wall along an axis.',
    whereMotorsMove:
      'Where two motors move one axis together (a crossed belt), a wall at 45° shows one motor alone and gives another spacing.',
    cycleHeaterShorter:
      'A cycle of the heater that is shorter than two layers shows up the wall at a spacing of its own, as the two beat; it is not compared.',
    layerHeightScrew:
      'Layer height, screw and motor count as set, without a doubt: with one, whether a layer is a whole number of steps cannot be told.',
  },
  examples: {
    tenSpacesOver: 'Ten spaces over 79.8 mm: the screw',
    layerMmSteps: 'Layer 0.25 mm on steps of 0.04 mm: an odd layer every fourth',
    pulleyIdlerWheel: 'Pulley, idler and wheel of nearly one size: a rough reading cannot tell them',
    zBeltRidges: 'Z by belt: ridges at 13 mm that nothing listed makes',
    feedGearMm: 'Feed gear of 11 mm on a wall of two lines',
  },
  sources: {
    tenSpacesOver:
      '79.8 / 10 = 7.98; 7.98 / 0.997 = 8.004 mm, against 8, 2 and 2π × 10.5 mm; 0.2 / 0.04 = 5 full steps',
    layerMmSteps: '0.25 / 0.04 = 6.25: a quarter step over in each layer, one step in 4 layers = 1 mm',
    pulleyIdlerWheel: '2 × 20 = 40; π × (12 + 2 × 0.4) = 40.21; 2π × 6.3 = 39.58 mm: all within 1.5 mm of the reading',
    zBeltRidges: '13 / 0.997 = 13.04 mm, against 2, 40 and 0.3 / 0.5 = 0.6 mm',
    mmMmMm: '2.4053 mm²; × π × 11 mm / (0.95 × 0.45 × 32 mm²)',
    powerScrewsLead: 'power screws: lead = pitch × starts',
    pitchGeometryTooth: 'pitch geometry: one tooth is one pitch',
    pitchDiameterPitch: 'pitch diameter = pitch × teeth / π: one turn moves pitch × teeth',
    stepAngleSubdivision: 'step angle and its subdivision',
    circumferenceDiameter: 'circumference = π × diameter',
    beltBendsAbout: 'a belt bends about its cords: circumference of the circle on which they run',
    ratioPeriodsLess: 'ratio of the two periods, less one',
    nearestWholeNumber: 'nearest whole number',
    heightsRoundedWhole:
      'heights are rounded to whole steps: the part of a step left over in each layer adds up to one step in so many layers',
    samplingSamplesPeriod: 'sampling: two samples a period at least',
    plasticFedPlastic: 'plastic fed = plastic laid',
    lengthOverNumber: 'length over number',
    taken: 'taken as it is',
    definitionLinearShrinkage: 'definition of linear shrinkage',
    leadOverGear: 'lead over gear ratio',
    turnPinionOver: 'turn of the pinion over gear ratio',
    heightOverHeight: 'height over height of one',
    areaCircle: 'area of a circle',
    circumferenceSection: 'circumference × section',
    layersCycleHeight: 'layers in a cycle × height',
    speedTime: 'speed × time',
    layersDayHeight: 'layers in a day × height',
    betweenRectangleRound: 'between a rectangle (1) and round ends, 1 − (1 − π/4) h/w, about 0.9',
  },
  parts,
  orders: {
    fits: (a: { part: Part; period: Amount; ridges: Amount }, p: Print) => ({
      glance: `◎ ${parts[a.part].short}`,
      sentence: `${firstUpper(parts[a.part].name)} fits: ${p(a.period)} against ${p(a.ridges)}. ${parts[a.part].look[0]}`,
    }),
    noneFits: (a: { compared: number; ridges: Amount }, p: Print) => ({
      glance: '✓ Leave the parts alone',
      sentence:
        a.compared === 1
          ? `The one part compared does not repeat every ${p(a.ridges)}: leave it alone.`
          : `None of the ${compared(a.compared)} repeats every ${p(a.ridges)}: leave them alone.`,
    }),
    severalFit: (a: { fitting: readonly WithPeriod[]; parting: Parting | undefined }, p: Print) => ({
      glance: '⟳ Several fit: read again',
      sentence: `${firstUpper(list(a.fitting.map((one) => withPeriod(one, p))))} fit. ${a.parting ? apart(a.parting, p) : 'Try the proof by hand on the first.'}`,
    }),
    nothingYet: (a: { ridges: Amount }, p: Print) => ({
      glance: '⟳ Enter the parts',
      sentence: `Ridges at ${p(a.ridges)}. Nothing to compare them with yet: enter what you know of the machine’s parts.`,
    }),
  },
  steps: {
    lookMore: (a: { part: Part }) => parts[a.part].look.slice(1).join(' '),
    proveIt: (a: { part: Part }) =>
      `${parts[a.part].prove} If they do not, the part is cleared, however well the numbers agree.`,
    onlyOne: (a: { compared: number }) => `Of ${compared(a.compared)} it is the only one that fits.`,
    lookAndProve: (a: { part: Part }) =>
      `${firstUpper(parts[a.part].name)}. ${parts[a.part].look.join(' ')} Proof: ${parts[a.part].prove}`,
    lessLikely: (a: { half: boolean } & WithPeriod, p: Print) =>
      a.half
        ? `Less likely: half of ${withPeriod(a, p)}, as two flats or an oval on it would print.`
        : `Less likely: twice ${withPeriod(a, p)}, as when every second ridge is too weak to be counted.`,
    notCompared: (a: { asked: readonly { readonly part: Part; readonly enter: readonly string[] }[] }, p: Print) =>
      `Not compared: ${a.asked.map(({ part, enter }) => `${lowerFirst(parts[part].short)} (${enter.length > 0 ? `enter: ${enter.map(p.called).join(', ')}` : 'enter layer height and drive as marked, without a ±'})`).join('; ')}.`,
    ruledOut: (a: { ruled: readonly { readonly part: Part; readonly why: keyof typeof whys }[] }) =>
      `Ruled out: ${a.ruled.map(({ part, why }) => `${lowerFirst(parts[part].short)}, ${whys[why]}`).join('; ')}.`,
    runnerUp: (a: { first: boolean; off: Off } & WithPeriod, p: Print) =>
      `${a.first ? 'Next nearest' : 'Then'}: ${withPeriod(a, p)}; ${mismatch(a.off, p)}, beyond the doubt.`,
    nearest: (a: { off: Off } & WithPeriod, p: Print) =>
      `Nearest: ${withPeriod(a, p)}; ${mismatch(a.off, p)}, beyond the doubt.`,
    countAgain: (a: { spaces: number; counted: number; parts: readonly Part[] }) =>
      `Count again: with ${a.spaces} spaces instead of ${a.counted}, ${list(a.parts.map((part) => parts[part].name))} would fit.`,
    part: (a: Parting, p: Print) => apart(a, p),
    ringing:
      'Waves that die away after a corner are ringing and belong to no part that turns. Waves that do not: look at gears and bearings not on this list.',
    layersDiffer:
      'Ridges without a fixed spacing come from layers that differ: cooling, hatches in the part, a draught. Measure at another place; if the spacing is another there, no part makes it.',
  },
  figure: {
    label: 'Periods of the parts on a logarithmic scale, against that of the ridges',
    ridges: (period: string) => `ridges at ${period}`,
    enter: 'enter the parts you know: each gets its mark here',
    fits: 'fits',
    doesNot: 'does not',
    multiple: 'half or double fits, less likely',
  },
};
export default en;
