import type { Amount, Print } from '../../../../engine/order';

type Side = 'high' | 'low';
/** The reading, by ohmmeter or on the screen. */
interface Seen {
  readonly by: 'ohms' | 'shown';
  readonly value: Amount;
}
interface Off {
  readonly side: Side;
  readonly by: Amount;
}
interface Due {
  readonly at: Amount;
  readonly due: Amount;
}
interface Facts {
  readonly has: Amount;
  readonly on: Amount;
  readonly gives: Amount;
}
/** Power over the marked power. */
interface Times {
  readonly times: number;
}

const sides = { high: 'high', low: 'low' };
const blocks = { hotter: 'hotter', colder: 'colder' };
const seen = ({ by, value }: Seen, p: Print) =>
  by === 'ohms' ? `it measures ${p(value)}` : `the screen shows ${p(value)}`;
const facts = ({ has, on, gives }: Facts, p: Print) => `${p(has)} on ${p(on)} give ${p(gives)}`;

export const orders = {
  sensorOpen: (a: Seen, p: Print) => ({
    glance: '✕ Sensor’s circuit is open',
    sentence: `Replace the sensor or mend its wire: the circuit is open (${seen(a, p)}).`,
  }),
  sensorShorted: (a: Seen, p: Print) => ({
    glance: '✕ Sensor’s wires touch',
    sentence: `Free or replace the sensor: its wires touch each other or metal (${seen(a, p)}), unless the block is still hot.`,
  }),
  leaveSensor: (a: { tells: Amount; room: Amount }, p: Print) => ({
    glance: '✓ Leave the sensor',
    sentence: `Leave the sensor: it tells ${p(a.tells)} where the room has ${p(a.room)}, so it is neither open nor shorted. Whether it is right at printing heat this does not show.`,
  }),
  screenStands: (a: { by: Amount }, p: Print) => ({
    glance: '✕ Screen does not follow',
    sentence: `Do not trust this screen: in a warm hand it rose by ${p(a.by)} only, so that it agrees with the room says nothing. Measure the sensor.`,
  }),
  warmMore: (a: { by: Amount }, p: Print) => ({
    glance: '⟳ Warm it by hand again',
    sentence: `Warm the sensor by hand again: whether the screen follows is too close to call (${p(a.by)}).`,
  }),
  sensorAgain: (a: Off, p: Print) => ({
    glance: '⟳ Measure again, both together',
    sentence: `Leave it and measure again: whether the sensor tells the truth is too close to call (${p.size(a.by)} ${sides[a.side]}).`,
  }),
  doNotTrust: (a: Off, p: Print) => ({
    glance: `✕ Sensor: ${p.size(a.by)} too ${sides[a.side]}`,
    sentence: `Do not trust this sensor: it reads ${p.size(a.by)} too ${sides[a.side]} at room temperature. Look up its type, or replace it.`,
  }),
  leaveHeater: (a: Facts, p: Print) => ({
    glance: '✓ Leave the heater',
    sentence: `Leave the heater: ${facts(a, p)}, as marked.`,
  }),
  heaterAgain: (a: Facts & Times, p: Print) => ({
    glance: '⟳ Keep unplugged, measure again',
    sentence: `Leave it unplugged and measure again: ${facts(a, p)}, ${p.number(a.times)} times the marking, too close to call.`,
  }),
  takeOut: (a: Facts & Times, p: Print) => ({
    glance: '⚠ Take this heater out',
    sentence: `Take this heater out: ${facts(a, p)}, ${p.number(a.times)} times what it is marked for.`,
  }),
  heaterOpen: (a: { has: Amount }, p: Print) => ({
    glance: '✕ Heater’s circuit is open',
    sentence: `Replace the heater or mend its wire: the circuit is open (${p(a.has)}).`,
  }),
  heaterWeak: (a: Facts & Times, p: Print) => ({
    glance: '✕ Wrong heater or bad joint',
    sentence: `Look for the wrong heater or a bad joint: ${facts(a, p)}, only ${p.number(a.times)} times what it is marked for.`,
  }),
};

export const steps = {
  off: 'Switch off, unplug, let it go cold before a wire is touched.',
  wiggle:
    'With the meter on, bend the cable at the connector, at the strain relief and where it moves: a reading that jumps is a broken wire or a loose crimp.',
  ownLeads:
    'Measure at the sensor’s own leads: open there, the sensor is broken; sound there, the cable or its crimp is.',
  lookForCrushed:
    'Look where the leads pass the screw that holds the sensor and the edge of the block: crushed sleeves touch there.',
  againstBlock:
    'Measure from each lead to the block as well: it must be open. A sensor wired to the block can destroy the board.',
  dueHot: (a: Due, p: Print) => `At ${p(a.at)} it should have ${p(a.due)}.`,
  /** `wrong` in kelvin. */
  dueHotByB: (a: Due & { off: Amount; wrong: number }, p: Print) =>
    `At ${p(a.at)} it should have ${p(a.due)}. If B is off by ${p(a.off)}, it reads ${p.number(a.wrong)} K wrong there, and no test at room temperature shows that.`,
  compareScreen:
    'Plug it in and compare what the screen shows, cold: a difference now lies in board, wires or settings.',
  measureSensor:
    'Then unplug the sensor and measure its resistance: it tells whether sensor, or board and settings, are at fault.',
  handAgain:
    'Hold sensor or block in the whole hand for two minutes, or warm it with breath through a straw, and watch the screen rise.',
  sideBySide:
    'Lay both side by side for half an hour, machine off, no fan, no sun; use a better thermometer, or ice water (0 °C) in a bag round both.',
  typeFirst: (a: { due: Amount }, p: Print) =>
    `Type first: it should have ${p(a.due)} here. A wrong type or table in the settings is the commonest cause. After that a bad crimp, which adds ohms: an NTC then reads low, platinum high. Moisture and crushed leads take ohms away, the other way round.`,
  blockIs: (a: { block: 'hotter' | 'colder'; by: Amount; at: Amount }, p: Print) =>
    `If every resistance is wrong by this ratio, the block is ${blocks[a.block]} than shown by ${p.size(a.by)} at ${p(a.at)}.`,
  neverMakeUp:
    'Never make up for it by printing at another number: the limits of the hot end go by the true temperature.',
  draws: (a: { current: Amount }, p: Print) =>
    `It draws ${p(a.current)}: plug, crimps, wire and switch must be rated for more than that.`,
  wiresToBlock: 'Measure from each wire to the block too: it must be open (above 1 MΩ).',
  takeOffTips: 'Hold the meter’s tips together and take off what it shows then; clean the wires’ ends.',
  squareOfVoltage: (a: { marked: Amount; on: Amount }, p: Print) =>
    `A heater for ${p(a.marked)} on ${p(a.on)}: power goes with the square of the voltage. It would burn through, with whatever is near.`,
  shortedWinding: 'A shorted winding, or another heater than marked.',
  rightKind: (a: { has: Amount; on: Amount }, p: Print) =>
    `One of the right kind has ${p(a.has)}, for a supply of ${p(a.on)}.`,
  wouldDraw: (a: { current: Amount }, p: Print) =>
    `It would draw ${p(a.current)}: look at the board’s switch, the plug and the wire for browning.`,
  shouldHave: (a: { has: Amount }, p: Print) => `It should have ${p(a.has)}.`,
  terminalsFirst:
    'Look at screw terminals and crimps first: a tinned wire under a screw works loose and burns. Measure again at the heater’s own wires.',
};
