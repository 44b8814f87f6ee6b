import { createSignal, Show } from 'solid-js';
import { LIMITS } from '../../machine/limits';
import { Problem } from './problem';
import say from './words/en';
import { shrinkPhoto, type Picture } from '../desk/photo';

/** What is wrong, who asks, and a photo of it. */
export function Complaint(props: {
  complaint: string;
  owner: string;
  pictured: boolean;
  onComplaint: (words: string) => void;
  onOwner: (name: string) => void;
  /** A field was left with something else in it. */
  onTyped: () => void;
  onPicture: (picture: Picture) => void;
}) {
  const [problem, setProblem] = createSignal<string>();
  const takePhoto = async (file: File | undefined) => {
    if (!file) return;
    setProblem(undefined);
    const small = await shrinkPhoto(file);
    if (typeof small === 'string') setProblem(small);
    else props.onPicture(small);
  };
  return (
    <section class="section">
      <label>
        {say.fresh.complaint}
        <textarea
          class="text-input"
          rows="3"
          maxlength={LIMITS.note}
          value={props.complaint}
          onInput={(event) => props.onComplaint(event.currentTarget.value)}
          onChange={() => props.onTyped()}
        />
      </label>
      <label class="case-line">
        {say.fresh.owner}
        <input
          class="text-input"
          maxlength={LIMITS.name}
          value={props.owner}
          onInput={(event) => props.onOwner(event.currentTarget.value)}
          onChange={() => props.onTyped()}
        />
      </label>
      <label class="case-line">
        {say.fresh.photo}
        <input
          class="text-input"
          type="file"
          accept="image/*"
          onChange={(event) => void takePhoto(event.currentTarget.files?.[0])}
        />
      </label>
      <Show when={props.pictured}>
        <p role="status">{say.fresh.ready}</p>
      </Show>
      <Problem sentence={problem()} />
    </section>
  );
}
