import type { Meta } from '../../engine/calculator';

export default {
  topic: 'part',
  order: 330,
} satisfies Meta;
