/** A key that opens the device's camera, or its own way to a file. */
export function FileKey(props: { label: string; main: boolean; camera: boolean; onFile: (file: File) => void }) {
  const take = (field: HTMLInputElement) => {
    const file = field.files?.[0];
    // The same file may be chosen again.
    field.value = '';
    if (file) props.onFile(file);
  };
  return (
    <label class={props.main ? 'button button-main file-key' : 'button file-key'}>
      {props.label}
      <input
        type="file"
        accept="image/*"
        capture={props.camera ? 'environment' : undefined}
        onChange={(event) => take(event.currentTarget)}
      />
    </label>
  );
}
