import type { PanelProps } from './phone';

/** To be built. */
export function NotePanel(props: PanelProps) {
  return <p>{props.take}</p>;
}
