import { choice } from '../../engine/calculator';

export const choices = {
  by: choice(
    'Friction known from',
    { pair: { label: 'what slides on what' }, scale: { label: 'two pulls with a luggage scale' } },
    'pair',
    { hint: 'The two pulls say more: they measure this guide as it is.' },
  ),
  // Sliding pairs: suppliers' engineering tables and common practice, from memory; half-widths span dry to run-in.
  pair: choice(
    'Guide',
    {
      bronze: { label: 'sintered bronze on steel, oiled', set: { mu_p: [0.12, 0.05] } },
      filled: { label: 'filled plastic bush, dry', set: { mu_p: [0.15, 0.07] } },
      polyacetal: { label: 'polyoxymethylene, dry', set: { mu_p: [0.25, 0.08] } },
      printed: { label: 'printed plastic on steel, dry', set: { mu_p: [0.3, 0.1] } },
      balls: { label: 'ball bushes or ball rail', set: { mu_p: [0.004, 0.002] } },
      wheels: { label: 'wheels, all turning', set: { mu_p: [0.02, 0.01] } },
      stuck: { label: 'wheels that slide, or dirt', set: { mu_p: [0.35, 0.15] } },
    },
    'filled',
    { from: 'guide.pair', hint: 'Also says which lubricant is right.' },
  ),
  way: choice('It runs', { level: { label: 'level' }, upright: { label: 'up and down' } }, 'level', {
    hint: 'Upright, its weight is part of the load, and acts at the load’s line.',
  }),
  drive: choice('Driven', { one: { label: 'at one place' }, both: { label: 'on both sides of the guide' } }, 'one', {
    from: 'guide.drive',
  }),
};
