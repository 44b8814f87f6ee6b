import { formatNumber } from '../../quantity/format';
import type { Context, Instruction } from '../../engine/calculator';
import type { choices } from './choices';

type Symbols =
  | 'R_m' | 'T_r' | 'T_a' | 'T_s' | 'T_w' | 'dT_s' | 'dT_max' | 'R_e' | 'R_w' | 'dT_B' | 'dT_R' | 'R_lo' | 'R_hi' | 'T_lo'
  | 'T_hi' | 'R_h' | 'V' | 'V_r' | 'P_r' | 'P' | 'I' | 'R_x' | 'k_P' | 'k_lo' | 'k_hi' | 'delta_B'; // prettier-ignore
type Ask = Context<Symbols, typeof choices>;

const OFF = 'Switch off, unplug, let it go cold before a wire is touched.';
const WIGGLE =
  'With the meter on, bend the cable at the connector, at the strain relief and where it moves: a reading that jumps is a broken wire or a loose crimp.';

function broken(ctx: Ask): Instruction {
  const what = ctx.choice('by') === 'ohms' ? `it measures ${ctx.text('R_m')}` : `the screen shows ${ctx.text('T_r')}`;
  return {
    headline: `Replace the sensor or mend its wire: the circuit is open (${what}).`,
    steps: [
      OFF,
      WIGGLE,
      'Measure at the sensor’s own leads: open there, the sensor is broken; sound there, the cable or its crimp is.',
    ],
  };
}

function shorted(ctx: Ask): Instruction {
  const what = ctx.choice('by') === 'ohms' ? `it measures ${ctx.text('R_m')}` : `the screen shows ${ctx.text('T_r')}`;
  return {
    headline: `Free or replace the sensor: its wires touch each other or metal (${what}), unless the block is still hot.`,
    steps: [
      OFF,
      'Look where the leads pass the screw that holds the sensor and the edge of the block: crushed sleeves touch there.',
      'Measure from each lead to the block as well: it must be open. A sensor wired to the block can destroy the board.',
    ],
  };
}

/** What a deviation at room temperature, or a wrong B, makes of the working temperature. */
function hot(ctx: Ask): string[] {
  if (ctx.choice('law') !== 'beta') {
    return [`At ${ctx.text('T_w')} it should have ${ctx.text('R_w')}.`];
  }
  const off = ctx.known('dT_B');
  return [
    `At ${ctx.text('T_w')} it should have ${ctx.text('R_w')}. If B is off by ${ctx.text('delta_B')}, it reads ${formatNumber(Math.abs(off?.value ?? 0), 2, ctx.mark)} K wrong there, and no test at room temperature shows that.`,
  ];
}

const other = (ctx: Ask): string =>
  ctx.choice('by') === 'ohms'
    ? 'Plug it in and compare what the screen shows, cold: a difference now lies in board, wires or settings.'
    : 'Then unplug the sensor and measure its resistance: it tells whether sensor, or board and settings, are at fault.';

function sensorCheck(ctx: Ask): Instruction {
  if (ctx.choice('by') === 'ohms') {
    ctx.number('T_a');
    if (ctx.number('R_m') > ctx.number('R_hi')) return broken(ctx);
    if (ctx.number('R_m') < ctx.number('R_lo')) return shorted(ctx);
  } else {
    ctx.number('T_a');
    if (ctx.number('T_r') < ctx.number('T_lo')) return broken(ctx);
    if (ctx.number('T_r') > ctx.number('T_hi')) return shorted(ctx);
  }
  const state = ctx.check('dT_s');
  const side = ctx.number('dT_s') > 0 ? 'high' : 'low';
  const size = ctx.text('dT_s', { magnitude: true });
  if (state === 'within') {
    return {
      headline: `Leave the sensor: it tells ${ctx.text('T_s')} where the room has ${ctx.text('T_a')}.`,
      steps: [...hot(ctx), WIGGLE, other(ctx)],
    };
  }
  if (state !== 'beyond') {
    return {
      headline: `Leave it and measure again: whether the sensor tells the truth is too close to call (${size} ${side}).`,
      steps: [
        'Lay both side by side for half an hour, machine off, no fan, no sun; use a better thermometer, or ice water (0 °C) in a bag round both.',
        ...hot(ctx),
      ],
      measureAgain: true,
    };
  }
  const real = ctx.number('dT_s') > 0 ? 'colder' : 'hotter';
  const scaled =
    ctx.choice('law') === 'beta'
      ? [
          `If the fault is all in the resistance, the block is ${real} than shown by ${ctx.text('dT_R', { magnitude: true })} at ${ctx.text('T_w')}.`,
        ]
      : [];
  return {
    headline: `Do not trust this sensor: it reads ${size} too ${side} at room temperature. Look up its type, or replace it.`,
    steps: [
      OFF,
      `Type first: it should have ${ctx.text('R_e')} here. A wrong B value or a wrong table in the settings is the commonest cause, after that a bad crimp (reads low) and moisture or crushed leads (reads high).`,
      ...scaled,
      other(ctx),
      'Never make up for it by printing at another number: the limits of the hot end go by the true temperature.',
    ],
  };
}

function heaterCheck(ctx: Ask): Instruction {
  const ratio = ctx.number('k_P');
  const text = formatNumber(ratio, 2, ctx.mark);
  const facts = `${ctx.text('R_h')} on ${ctx.text('V')} give ${ctx.text('P')}`;
  if (ctx.verdict === 'within') {
    return {
      headline: `Leave the heater: ${facts}, as marked.`,
      steps: [
        `It draws ${ctx.text('I')}: plug, crimps, wire and switch must be rated for more than that.`,
        'Measure from each wire to the block too: it must be open (above 1 MΩ).',
      ],
    };
  }
  if (ctx.verdict !== 'beyond') {
    return {
      headline: `Leave it unplugged and measure again: ${facts}, ${text} times the marking, too close to call.`,
      steps: ['Hold the meter’s tips together and take off what it shows then; clean the wires’ ends.'],
      measureAgain: true,
    };
  }
  if (ratio > ctx.number('k_hi')) {
    const square = ctx.number('V') > 1.3 * ctx.number('V_r');
    return {
      headline: `Take this heater out: ${facts}, ${text} times what it is marked for.`,
      steps: [
        square
          ? `A heater for ${ctx.text('V_r')} on ${ctx.text('V')}: power goes with the square of the voltage. It would burn through, with whatever is near.`
          : 'A shorted winding, or another heater than marked.',
        `One of the right kind has ${ctx.text('R_x')}, for a supply of ${ctx.text('V_r')}.`,
        `It would draw ${ctx.text('I')}: look at the board’s switch, the plug and the wire for browning.`,
      ],
    };
  }
  return {
    headline:
      ratio < 0.05
        ? `Replace the heater or mend its wire: the circuit is open (${ctx.text('R_h')}).`
        : `Look for the wrong heater or a bad joint: ${facts}, only ${text} times what it is marked for.`,
    steps: [
      OFF,
      `It should have ${ctx.text('R_x')}.`,
      'Look at screw terminals and crimps first: a tinned strand under a screw works loose and burns. Measure again at the heater’s own wires.',
    ],
  };
}

/** What the hand does, for every state of the checks. */
export function instruct(ctx: Ask): Instruction {
  return ctx.choice('what') === 'heater' ? heaterCheck(ctx) : sensorCheck(ctx);
}
