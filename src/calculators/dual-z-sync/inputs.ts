import { angle, count, length, ratio, slope } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { choice, input } from '../../engine/calculator';

export const choices = {
  by: choice(
    'Height difference known from',
    { heights: { label: 'two heights' }, level: { label: 'slope of the gantry, with the level' } },
    'heights',
    {
      hint: 'The phone’s level reads against gravity, so the frame is read too; two heights by caliper are usually finer.',
    },
  ),
  drive: choice('Screws joined by', { belt: { label: 'a closed belt' }, motors: { label: 'two motors' } }, 'belt', {
    from: 'z.drive',
  }),
  hand: choice('Thread', { right: { label: 'right-hand' }, left: { label: 'left-hand' } }, 'right', {
    from: 'z.hand',
  }),
};

export const inputs = {
  dh: input('Height difference, right minus left', length.mm, {
    range: [-50, 50],
    tool: 'caliper',
    signed: true,
    hint: 'Of what the screws lift, from the frame up, at two places. By a gauge under the nozzle: thicker = higher where the gantry is lifted, lower where the bed is.',
    when: { by: 'heights' },
  }),
  S_m: input('Distance between the two places', length.mm, {
    typical: 400,
    spread: 1,
    range: [20, 2000],
    tool: 'rule',
    hint: 'At the screws this is the distance between the screws.',
    when: { by: 'heights' },
  }),
  i_g: input('Slope of the gantry, right end higher is +', slope.mm_m, {
    range: [-150, 150],
    signed: true,
    phone: 'slope',
    hint: 'Along what the screws lift, from screw to screw, on a straight bar laid across it if it is narrow.',
    when: { by: 'level' },
  }),
  i_f: input('Slope of the frame below, right end higher is +', slope.mm_m, {
    range: [-150, 150],
    signed: true,
    phone: 'slope',
    hint: 'The same way on what the screws stand on: a printer on a crooked table leans as a whole, and that is no fault. Enter 0 ± 0 only for a frame that was levelled with something finer.',
    when: { by: 'level' },
  }),
  S: input('Distance between the screws', length.mm, {
    typical: 400,
    spread: 1,
    range: [20, 2000],
    tool: 'rule',
    from: 'z.screw-distance',
  }),
  W: input('Bed width', length.mm, { typical: 220, spread: 1, range: [20, 2000], tool: 'rule', from: 'bed.width' }),
  P_h: input('Screw lead', length.mm, {
    typical: 8,
    range: [0.5, 50],
    from: 'z.lead',
    hint: 'Lead = pitch × starts: travel of the nut in one turn.',
  }),
  z: input('Teeth of a sync pulley', count.one, {
    typical: 20,
    range: [8, 200],
    from: 'z.pulley-teeth',
    when: { drive: 'belt' },
  }),
  theta_s: input('Full step of the motors', angle.deg, {
    typical: 1.8,
    range: [0.1, 15],
    from: 'z.step-angle',
    when: { drive: 'motors' },
  }),
  h_1: input('First layer', length.mm, { typical: 0.2, range: [0.04, 2], from: 'print.first-layer' }),
  k_1: input('Share of the first layer allowed', ratio.one, {
    typical: 0.25,
    range: [0.01, 1],
    basis: commonPractice,
    seldom: true,
  }),
};
