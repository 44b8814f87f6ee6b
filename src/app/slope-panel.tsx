import type { PanelProps } from './phone';

/** To be built. */
export function SlopePanel(props: PanelProps) {
  return <p>{props.take}</p>;
}
