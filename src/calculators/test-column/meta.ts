import type { Meta } from '../../engine/calculator';

export default {
  topic: 'part',
  order: 310,
} satisfies Meta;
