/** Words of the check “Layer height and screw step”. */
import type { Amount, Print } from '../../../engine/order';

/** What a position is held to. */
const grids = { full: 'full steps', micro: 'microsteps' };
type Grid = keyof typeof grids;

interface Microstep {
  /** Friction swallows a single microstep. */
  readonly swallowed: boolean;
  readonly friction: Amount;
  /** Torque that one microstep of lag makes. */
  readonly lag: Amount;
}
interface Freeing {
  readonly below: Amount;
}
/** Largest error of a layer that holding microsteps leaves; undefined where it leaves none. */
interface Left {
  readonly most: Amount | undefined;
}

const microstep = ({ swallowed, friction, lag }: Microstep, p: Print) =>
  swallowed
    ? `Friction (${p(friction)}) is more than one microstep of lag makes (${p(lag)}): it swallows single microsteps, and a finer setting gains nothing.`
    : `One microstep of lag makes ${p(lag)}, more than the friction of ${p(friction)}: every microstep moves.`;
const freeing = ({ below }: Freeing, p: Print) =>
  `Bring the friction at the motor below ${p(below)}: clean and grease the drive, let the nut or belt align itself, ease over-tight guides, look for a bent screw.`;
const left = ({ most }: Left, p: Print) =>
  most === undefined ? 'no layer is rounded' : `no layer is off by more than ${p(most)}`;

const en = {
  inputs: {
    P_h: {
      hint: 'Lead = pitch × starts, as marked: the pattern follows from the nominal value, not from a measured one.',
    },
    i_g: {
      hint: '1 where the motor sits on the screw. A small wheel on the motor and a large one on the screw give more than 1.',
    },
    tau_h: {
      hint: 'From its data sheet; less in proportion where the driver gives it less than the rated current.',
    },
    tau_f: {
      label: 'Friction torque at the motor',
      hint: 'Motor off and uncoupled: a thread wound round the screw’s pulley, pulled with a scale until it turns. Force × radius, divided by the gear ratio.',
    },
    a: {
      label: 'Step error of the motor, share of a full step',
    },
    k: {
      label: 'Share of the layer allowed',
    },
    k_h: {
      label: 'Most the layer height may be changed by, share of it',
      hint: 'A whole step farther away than this is not offered: the steps are then too coarse for the layer.',
    },
  },
  choices: {
    grid: {
      label: 'Position is held to',
      hint: 'The usual driver keeps its current on and holds microsteps, as far as friction allows. Full steps are where a motor settles when its current is cut between moves.',
      options: {
        full: 'full steps',
        micro: 'microsteps',
      },
    },
  },
  results: {
    q: 'Travel of one full step',
    q_m: 'Travel of one microstep',
    g: 'Step that heights are rounded to',
    n: 'Steps in one layer',
    n_f: 'Whole steps below',
    n_c: 'Whole steps above',
    h_f: 'Nearest whole-step height below',
    h_c: 'Nearest whole-step height above',
    e: 'Largest error of a layer',
    s: 'The same as a share of the layer',
    r: 'Height above the bed is off by at most',
    tau_inc: 'Torque that one microstep of lag makes',
    delta: 'Electrical lag before it moves',
    m_f: 'Microsteps asked for before it moves',
    x_f: 'Smallest reliable move',
    x_a: 'The motor’s own step error, plus or minus',
    e_lim: 'Allowed',
  },
  limits: {
    s: 'Largest error of a layer, share of the layer',
    x_f: 'Smallest reliable move',
  },
  cautions: {
    switchOffUnplug:
      'Switch off and unplug before you touch the screw or belt of the Z drive: a homing move can crush a finger.',
    supportGantryBed: 'Block the gantry or bed up before you free or uncouple the drive: it can drop and crush a hand.',
    motorsTheirDrivers:
      'Motors and their drivers burn the hand. Never pull a motor’s plug with the power on: it can destroy the driver.',
  },
  proof:
    'Print two plain walls, at least ten repeats of the pattern high, one at the old layer height and one at the new, and look along them under a low lamp: the ridges at the spacing of the pattern should be gone from the second. For friction: put a dial indicator on the gantry, ask for ten single microsteps up, then ten down; each may fall short by the smallest reliable move, after a change of direction by twice that, and no more.',
  beware: {
    torqueMicrostepLag:
      'The torque of one microstep of lag is not the torque the motor has left: the peak hardly depends on the number of microsteps. It only says how far the motor must lag before it overcomes friction.',
    afterFirstMove:
      'After the first move in one direction the lag stays about the same, so layers that all go up keep their height; it shows after every move the other way, then twice.',
    wholeStepsMake:
      'Whole steps make layers alike; they do not make them true. The motor’s own step error and the screw’s lead error remain.',
    sineTorqueLeaves:
      'The sine of the torque leaves out the detent torque (2 to 10 % of the holding torque, from memory) and the driver’s current error.',
    firstLayerAnother:
      'A first layer of another height shifts the pattern; its repeat and the errors of the later layers’ thickness stay of the same size.',
    ridgesOncePer: 'Ridges once per turn of the screw (one lead apart) are not rounding: look for a bent screw.',
  },
  examples: {
    leadMmLayer: 'Lead 8 mm, layer 0.20 mm: five full steps, no rounding',
    leadMmLayer2: 'Lead 8 mm, layer 0.25 mm: 25/4 full steps, repeats every 4 layers',
    sameHeldSixteenths: 'The same held to sixteenths of a step: 100 microsteps, no rounding',
    leadMmLayer3: 'Lead 2 mm, layer 0.125 mm: between steps, but too little to matter',
    beltPinionTeeth: 'Belt and pinion, 20 teeth of 2 mm, no gear: a full step is a whole layer',
    frictionHalfHolding: 'Friction of half the holding torque: a third of a full step',
  },
  sources: {
    powerScrewsLead: 'vocabulary of screw threads: the lead is the travel in one turn, pitch × starts',
    pitchGeometryTurn: 'pitch geometry: one turn moves pitch × teeth',
    stepAngleSubdivision: 'control motors, stepping motors: step angle and its subdivision',
    torqueHoldingTorque: 'torque = holding torque × sine of the electrical lag; a full step is 90° electrical',
    layerEitherWhole: 'a layer is either the whole steps below or the whole steps above its height',
    positionHeldFull: 'position held to full steps',
    positionHeldMicrosteps: 'position held to microsteps',
    heightOverHeight: 'height over height of one',
    betweenWholeSteps: 'between whole steps both kinds of layer occur, because their mean is the layer height',
    errorOverLayer: 'error over layer height',
    roundingNearestStep: 'rounding to the nearest step',
    shareFullStep: 'share of a full step',
    leadMmLayer: '8 mm × 1.8° / 360° = 0.04 mm; 0.20 / 0.04 = 5',
    leadMmLayer2: '0.25 / 0.04 = 6.25; 0.28 − 0.25 = 0.03 mm; 0.03 / 0.25 = 12 %',
    sameHeldSixteenths: '0.25 / 0.0025 = 100',
    leadMmLayer3: '2 mm × 1.8° / 360° = 0.01 mm; half a step of 0.01 mm in 0.125 mm is 4 %',
    beltPinionTeeth: '2 mm × 20 × 1.8° / 360° = 0.2 mm; 0.3 mm lies midway between 0.2 and 0.4 mm',
    tableMicrostepsAsin: 'sin (90°/16) = 0.0980; asin 0.5 = 30°',
  },
  orders: {
    tooCoarse: (a: { grid: Grid }) => ({
      glance: a.grid === 'full' ? '✓ Keep height · hold microsteps' : '✓ Keep height · more microsteps',
      sentence: `Leave the layer height: one of the ${grids[a.grid]} is too coarse for it. ${a.grid === 'full' ? 'Hold microsteps' : 'Set more microsteps'}, gear down or use a smaller lead.`,
    }),
    setMicrosteps: (a: { to: number }, p: Print) => ({
      glance: `↑ ${p.number(a.to)} microsteps`,
      sentence: `Leave the layer height, set ${p.number(a.to)} microsteps: as set now, one of them is too coarse for it.`,
    }),
    setHeight: (a: { to: Amount; by: Amount; lower: boolean; grid: Grid }, p: Print) => ({
      glance: `${a.lower ? '↓' : '↑'} Layer height ${p(a.to)}`,
      sentence: `Set the layer height to ${p(a.to)}, ${p(a.by)} ${a.lower ? 'lower' : 'higher'}: a whole number of ${grids[a.grid]}.`,
    }),
    freeFirst: {
      glance: '⚠ Free the Z drive first',
      sentence: 'Free the Z drive before anything else: its friction may be more than the motor can hold.',
    },
    free: (a: { rests: Amount }, p: Print) => ({
      glance: '↕ Free the Z drive',
      sentence: `Free the Z drive: friction lets it rest up to ${p(a.rests)} from where it should, whatever the layer height.`,
    }),
    enterMarked: {
      glance: '⟳ Enter marked values, no ±',
      sentence: 'Change nothing yet: enter the drive and the layer height as marked, without a ±.',
    },
    measureFriction: {
      glance: '⟳ Measure the friction better',
      sentence: 'Leave the layer height; measure the friction at the motor better before freeing anything.',
    },
    leaveWhole: (a: { grid: Grid }) => ({
      glance: '✓ Leave the layer height',
      sentence: `Leave it: every layer is a whole number of ${grids[a.grid]}.`,
    }),
    leaveNearly: (a: { most: Amount }, p: Print) => ({
      glance: '✓ Leave the layer height',
      sentence: `Leave it: no layer is off by more than ${p(a.most)}, too little to matter.`,
    }),
  },
  steps: {
    noneRounded: 'No layer is rounded.',
    noRepeat: (a: { odd: Amount }, p: Print) =>
      `An odd layer comes about every ${p(a.odd)}, without a regular repeat: if the ridges on the wall are spaced otherwise, rounding is not their cause.`,
    repeats: (a: { layers: number; period: Amount; odd: Amount | undefined }, p: Print) =>
      `The pattern repeats every ${p.number(a.layers)} layers, ${p(a.period)}${a.odd ? `, with an odd layer about every ${p(a.odd)}` : ''}: if the ridges on the wall are spaced otherwise, rounding is not their cause.`,
    friction: microstep,
    freeing,
    frictionToo: (a: Freeing, p: Print) => `Friction is too high as well. ${freeing(a, p)}`,
    nearestSteps: (a: { to: Amount; below: Amount | undefined; above: Amount }, p: Print) =>
      `The whole steps nearest to ${p(a.to)} are at ${a.below ? `${p(a.below)} and ${p(a.above)}` : p(a.above)}.`,
    whereHeld: (a: Left, p: Print) => `Where the driver keeps its current on and holds microsteps, ${left(a, p)}.`,
    gearDown: (a: { times: number; to: Amount }, p: Print) =>
      `Gearing down ${p.number(a.times)} times or more, or a lead or pinion smaller by as much, brings a step down to ${p(a.to)}: then a whole one lies near any such layer.`,
    noneBelow: (a: { grid: Grid; travel: Amount }, p: Print) =>
      `There is no whole step below: one of the ${grids[a.grid]} is ${p(a.travel)}.`,
    otherHeight: (a: { to: Amount; by: Amount; lower: boolean }, p: Print) =>
      `${p(a.to)} will do as well: ${p(a.by)} ${a.lower ? 'lower' : 'higher'}.`,
    threeQuarters: 'Keep the layer below about three quarters of the nozzle bore (common practice).',
    leaveIfHeld: (a: Left & Microstep, p: Print) =>
      `Leave the height alone if the driver keeps its current on and holds microsteps: then ${left(a, p)}. ${microstep(a, p)}`,
    ratedCurrent:
      'Check that the driver gives the motor the current it is rated for; less current means less holding torque in proportion. More than rated overheats it.',
    nominal:
      'Rounding follows from the nominal values that the controller counts with. A lead or a height with an uncertainty cannot tell whether a layer is a whole number of steps.',
    cannotTell: 'The reading does not tell whether friction takes too much of a layer.',
    ownError: (a: { error: Amount }, p: Print) =>
      `The motor’s own error, up to ${p(a.error)} either way, remains at any height.`,
  },
  figure: {
    label: 'Error of each layer’s height and thickness, by layer number',
    heightOff: 'height of a layer’s top is off by, µm',
    thicknessOff: 'its thickness is off by, µm (dashed: allowed)',
    whole: (height: string, grid: Grid) => `${height} is a whole number of ${grids[grid]}`,
    nearest: (grid: Grid, below: string | undefined, above: string) =>
      `On ${grids[grid]}: ${below === undefined ? 'none below' : `${below} below`}, ${above} above`,
    noRounding: 'no rounding: every layer alike',
    noRepeat: (layers: number) => `no repeat within ${layers} layers`,
    repeats: (layers: number, period: string) => `repeats every ${layers} layers = ${period}`,
    usual: {
      title: 'Usual layer heights',
      caption: (grid: Grid, travel: string) => `Usual layer heights on ${grids[grid]} of ${travel}, in mm`,
      layer: 'Layer',
      repeats: 'Repeats after layers',
      error: 'Largest error',
      below: 'Below',
      above: 'Above',
      over: (layers: number) => `over ${layers}`,
      none: 'none',
    },
  },
};
export default en;
