import type { Meta } from '../../engine/calculator';

export default {
  topic: 'motion',
  order: 70,
  phone: ['note'],
} satisfies Meta;
