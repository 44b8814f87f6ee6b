import type { When } from '../../engine/calculator';
import type { PartKey, Result } from './asked';

/** A part that comes round again and again, and where its period stands among the formulas. */
export interface Part {
  readonly id: string;
  /** Of its words. */
  readonly key: PartKey;
  /** Result that is its period; the odd layers of rounding have a number per length instead. */
  readonly period: Result;
  readonly mismatch: Result;
  /** It turns: a second flat halves its period. */
  readonly turns: boolean;
  readonly when?: When;
}

const up = { way: 'up' } as const;
const along = { way: 'along' } as const;
const screw = { way: 'up', lift: 'screw' } as const;
const belt = { way: 'up', lift: 'belt' } as const;

/** Every part that is compared. The order is that of a list without a reading. */
export const parts: readonly Part[] = [
  {
    id: 'lead',
    key: 'lead',
    period: 'p_lead',
    mismatch: 'e_lead',
    turns: true,
    when: screw,
  },
  {
    id: 'thread',
    key: 'thread',
    period: 'p_thread',
    mismatch: 'e_thread',
    turns: false,
    when: screw,
  },
  {
    id: 'tooth',
    key: 'toothUp',
    period: 'p_tooth',
    mismatch: 'e_tooth',
    turns: false,
    when: belt,
  },
  {
    id: 'tooth',
    key: 'toothAlong',
    period: 'p_tooth',
    mismatch: 'e_tooth',
    turns: false,
    when: along,
  },
  {
    id: 'pulley',
    key: 'pulleyUp',
    period: 'p_pulley',
    mismatch: 'e_pulley',
    turns: true,
    when: belt,
  },
  {
    id: 'pulley',
    key: 'pulleyAlong',
    period: 'p_pulley',
    mismatch: 'e_pulley',
    turns: true,
    when: along,
  },
  {
    id: 'motor',
    key: 'motor',
    period: 'p_motor',
    mismatch: 'e_motor',
    turns: true,
    when: up,
  },
  {
    id: 'idler',
    key: 'idlerUp',
    period: 'p_idler',
    mismatch: 'e_idler',
    turns: true,
    when: belt,
  },
  {
    id: 'idler',
    key: 'idlerAlong',
    period: 'p_idler',
    mismatch: 'e_idler',
    turns: true,
    when: along,
  },
  {
    id: 'odd',
    key: 'odd',
    period: 'k_odd',
    mismatch: 'e_odd',
    turns: false,
    when: up,
  },
  {
    id: 'wheel',
    key: 'wheel',
    period: 'p_wheel',
    mismatch: 'e_wheel',
    turns: true,
  },
  {
    id: 'step',
    key: 'step',
    period: 'p_step',
    mismatch: 'e_step',
    turns: false,
    when: along,
  },
  {
    id: 'cycle',
    key: 'cycle',
    period: 'p_cycle',
    mismatch: 'e_cycle',
    turns: false,
    when: along,
  },
  {
    id: 'gear',
    key: 'gearUp',
    period: 'p_gear',
    mismatch: 'e_gear',
    turns: true,
    when: up,
  },
  {
    id: 'gear',
    key: 'gearAlong',
    period: 'p_gear',
    mismatch: 'e_gear',
    turns: true,
    when: along,
  },
  {
    id: 'heat',
    key: 'heatUp',
    period: 'p_heat',
    mismatch: 'e_heat',
    turns: false,
    when: up,
  },
  {
    id: 'heat',
    key: 'heatAlong',
    period: 'p_heat',
    mismatch: 'e_heat',
    turns: false,
    when: along,
  },
  {
    id: 'day',
    key: 'day',
    period: 'p_day',
    mismatch: 'e_day',
    turns: false,
    when: up,
  },
];

/** The whole of the rounding pattern: so many odd layers, until it begins again. */
export const repeatOfRounding: Part = {
  id: 'repeat',
  key: 'repeat',
  period: 'k_odd',
  mismatch: 'e_odd',
  turns: false,

  when: up,
};
