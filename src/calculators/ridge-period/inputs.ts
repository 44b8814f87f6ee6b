import { angle, count, length, ratio, speed, time } from '../../quantity/kinds';
import { commonPractice, derived } from '../../reference/citation';
import { choice, input } from '../../engine/calculator';

const up = { way: 'up' } as const;
const along = { way: 'along' } as const;
const screw = { way: 'up', lift: 'screw' } as const;
const belt = { way: 'up', lift: 'belt' } as const;

export const choices = {
  by: choice(
    'The ridges are',
    { count: { label: 'measured over several with a caliper' }, direct: { label: 'a period: from a photo, or typed' } },
    'count',
  ),
  way: choice(
    'They run',
    { up: { label: 'as rings stacked up the wall' }, along: { label: 'as waves along the wall, upright' } },
    'up',
    { hint: 'Waves: take them on a wall that runs along X or Y, and give the parts of that axis.' },
  ),
  lift: choice('Z is driven by', { screw: { label: 'a screw' }, belt: { label: 'a belt and pinion' } }, 'screw', {
    from: 'z.lift',
    when: up,
  }),
};

/** A part that is not known is left out of the comparison: a typical one would be another machine's. */
export const inputs = {
  L: input('Length over the ridges', length.mm, {
    range: [1, 2000],
    tool: 'caliper',
    when: { by: 'count' },
    hint: 'From the crest of one ridge to the crest of another, as far apart as the caliper and the wall allow, at right angles to the ridges.',
  }),
  N: input('Spaces between those two crests', count.one, {
    range: [1, 1000],
    when: { by: 'count' },
    hint: 'One less than the crests counted. Count twice: one too many shifts the period by a whole space.',
  }),
  P_w: input('Ridge period on the wall', length.mm, {
    range: [0.05, 1000],
    spread: 0.1,
    phone: 'ridges',
    when: { by: 'direct' },
    hint: 'From crest to crest. Type its ± behind it where you know it.',
  }),
  h: input('Layer height', length.mm, { optional: true, range: [0.01, 2], from: 'print.layer' }),
  P_h: input('Screw lead', length.mm, {
    optional: true,
    range: [0.5, 50],
    from: 'z.lead',
    when: screw,
    hint: 'Lead = pitch × starts: travel of the nut in one turn.',
  }),
  n_s: input('Starts of the screw', count.one, {
    optional: true,
    range: [1, 12],
    from: 'z.starts',
    when: screw,
    hint: 'Threads side by side: count the grooves that end at the screw’s face.',
  }),
  p: input('Pitch of the Z belt', length.mm, { optional: true, range: [1, 20], from: 'z.belt-pitch', when: belt }),
  z: input('Teeth of the Z pinion', count.one, {
    optional: true,
    range: [8, 200],
    from: 'z.pinion-teeth',
    when: belt,
  }),
  d_z: input('Diameter of the Z belt’s idler', length.mm, {
    optional: true,
    range: [3, 200],
    tool: 'caliper',
    from: 'z.idler-diameter',
    when: belt,
    hint: 'What the belt lies on; for a toothed idler over its teeth.',
  }),
  p_b: input('Belt pitch', length.mm, { optional: true, range: [1, 20], from: 'belt.pitch', when: along }),
  z_b: input('Teeth of the motor pulley', count.one, {
    optional: true,
    range: [8, 200],
    from: 'belt.pulley-teeth',
    when: along,
  }),
  d_i: input('Idler diameter', length.mm, {
    optional: true,
    range: [3, 200],
    tool: 'caliper',
    from: 'belt.idler-diameter',
    when: along,
    hint: 'What the belt lies on; for a toothed idler over its teeth.',
  }),
  r_w: input('Wheel radius where the flank touches', length.mm, {
    optional: true,
    spread: 0.3,
    range: [2, 200],
    tool: 'caliper',
    from: 'wheel.radius',
  }),
  d_g: input('Feed gear: diameter where it grips', length.mm, {
    optional: true,
    spread: 0.2,
    range: [2, 60],
    tool: 'caliper',
    from: 'extruder.gear-diameter',
    hint: 'Of the gear that bites the filament, a little less than over its teeth. Or the filament fed in one turn, divided by π.',
  }),
  w: input('Line width', length.mm, { optional: true, range: [0.05, 4], from: 'print.line-width' }),
  l_L: input('Length of line in one layer', length.mm, {
    optional: true,
    spread: 2,
    range: [1, 1e6],
    tool: 'rule',
    when: up,
    hint: 'Of the part with the ridges, all walls and filling of one layer added up. A plain wall: its outline, once for each line side by side.',
  }),
  t_c: input('Heater’s cycle, from on to on', time.s, {
    optional: true,
    spread: 0.3,
    range: [0.1, 3600],
    tool: 'stopwatch',
    from: 'hotend.cycle-time',
    hint: 'Time ten swings of the temperature shown, or of the heater’s lamp, and divide.',
  }),
  t_L: input('Time of one layer', time.s, {
    optional: true,
    spread: 0.3,
    range: [0.5, 1e5],
    tool: 'stopwatch',
    when: up,
    hint: 'Of the part with the ridges. Time ten layers and divide.',
  }),
  v: input('Print speed', speed.mm_s, { optional: true, range: [1, 1000], from: 'print.speed', when: along }),
  x: input('Jaws off the crests, both together', length.mm, {
    seldom: true,
    signed: true,
    typical: 0,
    spread: 0.2,
    range: [-0.9, 0.9],
    basis: commonPractice,
    when: { by: 'count' },
    hint: 'A crest is round: a jaw finds it to about a tenth. Spread over the spaces, so it shrinks with their number.',
  }),
  s: input('Shrinkage of the print', ratio.percent, {
    seldom: true,
    typical: 0.3,
    spread: 0.3,
    range: [0, 5],
    basis: commonPractice,
    hint: 'The wall is shorter than the machine moved. Stiff plastics that print near 210 °C shrink about 0.3 %, those that want a hot chamber up to 1 %.',
  }),
  theta_s: input('Full step of the motors', angle.deg, {
    seldom: true,
    typical: 1.8,
    range: [0.1, 15],
    from: 'z.step-angle',
  }),
  i_g: input('Gear ratio, motor turns per turn of the drive', ratio.one, {
    seldom: true,
    typical: 1,
    range: [0.05, 200],
    from: 'z.gear-ratio',
    when: up,
  }),
  a: input('Belt’s cords above what the idler touches', length.mm, {
    seldom: true,
    typical: 0.4,
    spread: 0.2,
    range: [0, 5],
    basis: commonPractice,
    hint: 'The cords set the length. Back of a 2 mm belt about 0.4 mm; over a toothed idler 0.25 mm; teeth on a smooth idler about 1 mm.',
  }),
  d_f: input('Filament diameter', length.mm, {
    seldom: true,
    typical: 1.75,
    spread: 0.03,
    range: [1, 4],
    tool: 'caliper',
    from: 'filament.diameter',
  }),
  k_A: input('Share of width × height that a line fills', ratio.one, {
    seldom: true,
    typical: 0.95,
    spread: 0.05,
    range: [0.5, 1.2],
    basis: derived('between a rectangle (1) and round ends, 1 − (1 − π/4) h/w, about 0.9'),
  }),
};
