import type { Meta } from '../../engine/calculator';

export default {
  topic: 'part',
  order: 320,
} satisfies Meta;
