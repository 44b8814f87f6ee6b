import { placedChoice } from '../../engine/shared-places';
import { beltOptions } from '../../reference/belts';
import { materials } from '../../reference/materials';
import { choice } from '../../engine/calculator';

/** Everything but the filament feed. */
const axes = ['x', 'y', 'z', 'zb'] as const;
export const onAxis = { axis: axes } as const;
export const onFeed = { axis: 'feed' } as const;
export const printed = { axis: axes, by: 'print' } as const;
export const travelled = { axis: axes, by: 'travel' } as const;
/** Along a belt of the carriage, by its own travel: how far it may have been stretched counts. */
export const pulled = { axis: ['x', 'y'], by: 'travel' } as const;
export const fed = { axis: 'feed', fed: 'travel' } as const;

/** Expansion and glass transition of a plastic, 10⁻⁶/K and °C. */
const plastic = (id: 'pla' | 'petg' | 'abs' | 'pc') => {
  const { expansion, softens } = materials[id];
  return { alpha: [expansion.value, expansion.half], T_g: [softens.value, softens.half] } as const;
};

export const choices = {
  axis: choice(
    {
      x: { set: { e_lim: 0.1 } },
      y: { set: { e_lim: 0.1 } },
      z: { set: { e_lim: 0.1 } },
      zb: { set: { e_lim: 0.1 } },
      feed: { set: { e_lim: 1 } },
    },
    'x',
  ),
  by: choice(
    {
      parts: {},
      travel: {},
      print: {},
    },
    'travel',
    { when: onAxis },
  ),
  fed: choice({ parts: {}, travel: {} }, 'travel', { when: onFeed }),
  belt: placedChoice('belt.type', beltOptions({ allowable: 'T_a', springRate: 'C_0' }), 'curved2', { when: pulled }),
  pair: choice(
    {
      sides: {},
      lengths: {},
    },
    'sides',
    { when: printed },
  ),
  material: choice(
    {
      pla: { set: plastic('pla') },
      petg: { set: plastic('petg') },
      abs: { set: plastic('abs') },
      pc: { set: plastic('pc') },
      other: {},
    },
    'pla',
    { when: printed },
  ),
};
