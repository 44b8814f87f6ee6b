import { choice } from '../../engine/calculator';

export const choices = {
  by: choice({ pair: {}, scale: {} }, 'pair'),
  // Sliding pairs: common practice; half-widths span dry to run-in.
  pair: choice(
    {
      bronze: { set: { mu_p: [0.12, 0.05] } },
      filled: { set: { mu_p: [0.15, 0.07] } },
      polyacetal: { set: { mu_p: [0.25, 0.08] } },
      printed: { set: { mu_p: [0.3, 0.1] } },
      balls: { set: { mu_p: [0.004, 0.002] } },
      wheels: { set: { mu_p: [0.02, 0.01] } },
      stuck: { set: { mu_p: [0.35, 0.15] } },
    },
    'filled',
    { from: 'guide.pair' },
  ),
  way: choice({ level: {}, upright: {} }, 'level'),
  drive: choice({ one: {}, both: {} }, 'one', {
    from: 'guide.drive',
  }),
};
