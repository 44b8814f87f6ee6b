import { canKeepAwake } from '../../../instrument/wake-lock';
import { Fold } from '../../../ui/fold';

export function NoteCautions() {
  return (
    <section class="cautions" aria-label="Cautions">
      <b>First</b>
      <ul>
        <li>Switch the machine off and pull its plug: a motor that starts takes the finger along.</li>
        <li>Keep hands and sleeves away from moving belts and pulleys, and from the hot end and the bed until cold.</li>
      </ul>
    </section>
  );
}

/** How a belt is plucked so that its note is its own. */
export function NoteHow(props: { open: boolean }) {
  return (
    <Fold title="How to pluck" open={props.open}>
      <ol>
        <li>Motors off and cold: a warm frame and a held motor pull on the belt.</li>
        <li>
          Choose a free span: from where the belt leaves one pulley or clamp to where it meets the next, touching
          nothing.
        </li>
        <li>Hold the carriage, or block it: if it gives, the note sinks while it rings.</li>
        <li>Hold the phone’s microphone one or two fingers from the middle of the span, without touching it.</li>
        <li>Pluck the flat of the belt at the middle of the span with a fingernail, gently, and let it ring out.</li>
        <li>Wait for silence and pluck again. When enough plucks agree, two high tones sound and listening ends.</li>
      </ol>
      <p class="small faint">
        {canKeepAwake()
          ? 'The screen stays on while it listens.'
          : 'This browser does not let a page keep the screen on: touch it now and then.'}{' '}
        The sound stays on this phone and is not kept.
      </p>
    </Fold>
  );
}
