import type { Meta } from '../../engine/calculator';

export default {
  topic: 'melt',
  order: 160,
} satisfies Meta;
