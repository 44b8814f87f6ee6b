import type { Meta } from '../../engine/calculator';

export default {
  topic: 'air',
  order: 210,
} satisfies Meta;
