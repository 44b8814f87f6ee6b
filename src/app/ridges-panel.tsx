import type { PanelProps } from './phone';

/** To be built. */
export function RidgesPanel(props: PanelProps) {
  return <p>{props.take}</p>;
}
