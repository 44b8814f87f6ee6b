import type { Meta } from '../../engine/calculator';

export default {
  topic: 'repair',
  order: 90,
} satisfies Meta;
