import type { Meta } from '../../engine/calculator';

export default {
  topic: 'bed',
  order: 300,
} satisfies Meta;
