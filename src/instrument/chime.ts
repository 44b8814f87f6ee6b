/** Far above any belt that is listened for (20 to 500 Hz), and no octave of one another. */
const TONES_HZ = [1760, 2349] as const;
const TONE_S = 0.16;
const GAIN = 0.25;

/** Two short rising tones. Resolved when they have died away, or could not sound. */
export async function chime(context: AudioContext): Promise<void> {
  if (context.state !== 'running') return;
  const start = context.currentTime + 0.02;
  const ends = TONES_HZ.map((tone, i) => {
    const at = start + i * TONE_S;
    const oscillator = new OscillatorNode(context, { frequency: tone });
    const gain = new GainNode(context, { gain: 0 });
    gain.gain.setValueAtTime(GAIN, at);
    gain.gain.exponentialRampToValueAtTime(GAIN / 1000, at + 2 * TONE_S);
    oscillator.connect(gain).connect(context.destination);
    oscillator.start(at);
    oscillator.stop(at + 2 * TONE_S);
    return new Promise((resolve) => oscillator.addEventListener('ended', resolve));
  });
  await Promise.all(ends);
}
