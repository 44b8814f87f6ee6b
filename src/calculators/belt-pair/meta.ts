import type { Meta } from '../../engine/calculator';

export default {
  topic: 'motion',
  order: 80,
  phone: ['note'],
} satisfies Meta;
