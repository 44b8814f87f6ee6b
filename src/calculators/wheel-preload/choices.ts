import { choice } from '../../engine/calculator';

export const choices = {
  by: choice(
    {
      slip: {},
      hanging: {},
      bush: {},
    },
    'slip',
  ),
  material: choice(
    {
      // Moduli, friction and rolling friction: handbook tables for plastics, from memory. The limits are
      // decisions, hence without a half-width: 1.67 times a third of the short-time yield stress (65, 62, 50 MPa).
      pom: {
        set: { E_w: [2.8, 0.3], nu_w: [0.35, 0.03], p_lim: 35, mu: [0.25, 0.07], c_rr: [0.015, 0.007] },
      },
      pc: {
        set: { E_w: [2.35, 0.15], nu_w: [0.38, 0.02], p_lim: 34, mu: [0.4, 0.1], c_rr: [0.015, 0.007] },
      },
      pa: {
        set: { E_w: [1.6, 0.4], nu_w: [0.4, 0.03], p_lim: 28, mu: [0.3, 0.1], c_rr: [0.02, 0.01] },
      },
      pu: {
        set: { E_w: [0.06, 0.03], nu_w: [0.48, 0.015], p_lim: 5, mu: [0.6, 0.2], c_rr: [0.04, 0.02] },
      },
    },
    'pom',
    { from: 'wheel.material' },
  ),
  contact: choice({ line: {}, edge: {} }, 'line', { from: 'wheel.contact' }),
  side: choice(
    {
      clockwise: {},
      anticlockwise: {},
    },
    'clockwise',
  ),
};
