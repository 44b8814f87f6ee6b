import type { Meta } from '../../engine/calculator';

export default {
  topic: 'part',
  order: 55,
  phone: ['ridges'],
} satisfies Meta;
