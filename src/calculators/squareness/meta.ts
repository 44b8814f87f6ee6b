import type { Meta } from '../../engine/calculator';

export default {
  topic: 'bed',
  order: 305,
  phone: ['skew'],
} satisfies Meta;
