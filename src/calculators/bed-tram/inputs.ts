import { angle, length, ratio } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { input } from '../../engine/calculator';

const typed = { layout: ['three', 'four'] } as const;
const fourth = { layout: 'four' } as const;
const place = { range: [-500, 2000], tool: 'rule', signed: true } as const;

export const inputs = {
  W: input('Bed width', length.mm, { typical: 220, spread: 1, range: [20, 2000], tool: 'rule', from: 'bed.width' }),
  D: input('Bed depth', length.mm, { typical: 220, spread: 1, range: [20, 2000], tool: 'rule', from: 'bed.depth' }),
  b_a: input('Adjusters from the bed’s edges', length.mm, {
    typical: 30,
    spread: 5,
    range: [-300, 900],
    tool: 'rule',
    signed: true,
    from: 'bed.adjuster-inset',
    hint: 'From the edge of the bed inwards to the middle of an adjuster; outside the bed is −.',
    when: { layout: ['corners', 'front', 'back'] },
  }),
  X_a: input('First adjuster, from the left edge', length.mm, {
    ...place,
    from: 'bed.adjuster-first-left',
    when: typed,
  }),
  Y_a: input('First adjuster, from the front edge', length.mm, {
    ...place,
    from: 'bed.adjuster-first-front',
    when: typed,
  }),
  X_b: input('Second adjuster, from the left edge', length.mm, {
    ...place,
    from: 'bed.adjuster-second-left',
    when: typed,
  }),
  Y_b: input('Second adjuster, from the front edge', length.mm, {
    ...place,
    from: 'bed.adjuster-second-front',
    when: typed,
  }),
  X_c: input('Third adjuster, from the left edge', length.mm, {
    ...place,
    from: 'bed.adjuster-third-left',
    when: typed,
  }),
  Y_c: input('Third adjuster, from the front edge', length.mm, {
    ...place,
    from: 'bed.adjuster-third-front',
    when: typed,
  }),
  X_d: input('Fourth adjuster, from the left edge', length.mm, {
    ...place,
    from: 'bed.adjuster-fourth-left',
    when: fourth,
  }),
  Y_d: input('Fourth adjuster, from the front edge', length.mm, {
    ...place,
    from: 'bed.adjuster-fourth-front',
    when: fourth,
  }),
  P_s: input('Pitch of the adjusters', length.mm, {
    typical: 0.7,
    range: [0.2, 50],
    from: 'bed.adjuster-pitch',
    hint: 'Travel in one turn: the pitch of a plain screw (M3 0.5 mm, M4 0.7 mm), the lead of a Z screw.',
  }),
  h_1: input('First layer', length.mm, { typical: 0.2, range: [0.04, 2], from: 'print.first-layer' }),
  c_m: input('Margin of the points', length.mm, {
    typical: 30,
    range: [0, 900],
    decided: true,
    seldom: true,
    hint: 'For the keys over the table: how far inside the edges the outer points lie.',
  }),
  k_t: input('Share of the first layer allowed for tilt', ratio.one, {
    typical: 0.25,
    range: [0.01, 1],
    basis: commonPractice,
    seldom: true,
  }),
  k_F: input('Share of the first layer allowed for warp', ratio.one, {
    typical: 0.5,
    range: [0.01, 2],
    basis: commonPractice,
    seldom: true,
  }),
  phi_h: input('Least turn a hand can set', angle.deg, {
    typical: 10,
    range: [0.5, 90],
    decided: true,
    basis: commonPractice,
    seldom: true,
  }),
};
