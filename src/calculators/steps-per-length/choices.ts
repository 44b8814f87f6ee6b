import { materials } from '../../reference/materials';
import { choice } from '../../engine/calculator';

/** Everything but the filament feed. */
const axes = ['x', 'y', 'z', 'zb'] as const;
export const onAxis = { axis: axes } as const;
export const onFeed = { axis: 'feed' } as const;
export const printed = { axis: axes, by: 'print' } as const;
export const travelled = { axis: axes, by: 'travel' } as const;
export const fed = { axis: 'feed', fed: 'travel' } as const;

/** Expansion and glass transition of a plastic, 10⁻⁶/K and °C. */
const plastic = (id: 'pla' | 'petg' | 'abs' | 'pc') => {
  const { expansion, softens } = materials[id];
  return { alpha: [expansion.value, expansion.half], T_g: [softens.value, softens.half] } as const;
};

export const choices = {
  axis: choice(
    'Steps of',
    {
      x: { label: 'X (or A), by a belt', set: { e_lim: 0.1 } },
      y: { label: 'Y (or B), by a belt', set: { e_lim: 0.1 } },
      z: { label: 'Z, by a screw', set: { e_lim: 0.1 } },
      zb: { label: 'Z, by a belt and pinion', set: { e_lim: 0.1 } },
      feed: { label: 'the filament feed', set: { e_lim: 1 } },
    },
    'x',
  ),
  by: choice(
    'To go by',
    {
      parts: { label: 'the parts alone: count' },
      travel: { label: 'the drive’s own travel, measured' },
      print: { label: 'printed pieces, measured' },
    },
    'travel',
    { when: onAxis, hint: 'A printed piece also shrinks; the drive’s own travel does not.' },
  ),
  fed: choice(
    'To go by',
    { parts: { label: 'the parts alone: count' }, travel: { label: 'filament fed, measured' } },
    'travel',
    { when: onFeed, hint: 'How deep the gear bites is not known: only a measured length tells.' },
  ),
  pair: choice(
    'Sizes measured on the piece',
    {
      sides: { label: 'an outside and an inside one' },
      lengths: { label: 'two outside ones, short and long' },
    },
    'sides',
    { when: printed, hint: 'Both along this axis. One size alone cannot tell a wide line from a wrong scale.' },
  ),
  material: choice(
    'Plastic of the piece',
    {
      pla: { label: 'PLA', set: plastic('pla') },
      petg: { label: 'PETG', set: plastic('petg') },
      abs: { label: 'ABS', set: plastic('abs') },
      pc: { label: 'polycarbonate', set: plastic('pc') },
      other: { label: 'another: enter its shrinkage' },
    },
    'pla',
    { when: printed },
  ),
};
