import { choice } from '../../engine/calculator';

export const choices = {
  by: choice(
    'Preload known from',
    {
      slip: { label: 'slip test, weight held up by hand' },
      hanging: { label: 'slip test, weight left on, wheel that slips most easily' },
      bush: { label: 'bush turned on since the wheel first touched' },
    },
    'slip',
    { hint: 'The slip test says more; the bush’s turn is an estimate.' },
  ),
  material: choice(
    'Wheel material',
    {
      // Moduli, friction and rolling friction: handbook tables for plastics, from memory. The limits are
      // decisions, hence without a half-width: 1.67 times a third of the short-time yield stress (65, 62, 50 MPa).
      pom: {
        label: 'polyoxymethylene',
        set: { E_w: [2.8, 0.3], nu_w: [0.35, 0.03], p_lim: 35, mu: [0.25, 0.07], c_rr: [0.015, 0.007] },
      },
      pc: {
        label: 'polycarbonate',
        set: { E_w: [2.35, 0.15], nu_w: [0.38, 0.02], p_lim: 34, mu: [0.4, 0.1], c_rr: [0.015, 0.007] },
      },
      pa: {
        label: 'polyamide 66, used to room air',
        set: { E_w: [1.6, 0.4], nu_w: [0.4, 0.03], p_lim: 28, mu: [0.3, 0.1], c_rr: [0.02, 0.01] },
      },
      pu: {
        label: 'polyurethane, about 95 Shore A',
        set: { E_w: [0.06, 0.03], nu_w: [0.48, 0.015], p_lim: 5, mu: [0.6, 0.2], c_rr: [0.04, 0.02] },
      },
    },
    'pom',
    { from: 'wheel.material' },
  ),
  contact: choice(
    'Flank on the rail',
    { line: { label: 'lies along a bevel or a worn-in band' }, edge: { label: 'rides on a rounded edge' } },
    'line',
    { from: 'wheel.contact', hint: 'Look for the bright band on the wheel: wide is a line, a hairline is an edge.' },
  ),
  side: choice(
    'Bush’s thick side stands, seen from the bolt head',
    {
      clockwise: { label: 'clockwise from fully retracted' },
      anticlockwise: { label: 'anticlockwise from fully retracted' },
    },
    'clockwise',
    { hint: 'Fully retracted: the wheel stands farthest from the rail. Mark the bush there with a pen.' },
  ),
};
