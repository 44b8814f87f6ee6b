import type { Meta } from '../../engine/calculator';

export default {
  topic: 'z',
  phone: ['slope'],
  order: 10,
} satisfies Meta;
