import type { Meta } from '../../engine/calculator';

export default {
  topic: 'air',
  order: 220,
} satisfies Meta;
