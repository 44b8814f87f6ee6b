import { For } from 'solid-js';
import { A } from '@solidjs/router';
import type { Settings } from '../../../machine/schema';
import { ChoiceField } from '../../../ui/choice-field';
import { useRecords } from '../../desk/context';
import { Files } from '../../files/section';
import { StorageStatus } from './storage';
import say from './words/en';

const OPTIONS = {
  mark: { label: say.mark, options: { point: '0.4', comma: '0,4' } },
  theme: say.theme,
  lengthUnit: { label: say.lengths.label, options: { mm: 'mm', in: say.lengths.inch } },
  forceUnit: { label: say.forces, options: { N: 'N', kgf: 'kgf', lbf: 'lbf' } },
  temperatureUnit: { label: say.temperatures, options: { C: '°C', F: '°F' } },
} as const satisfies Partial<Record<keyof Settings, { label: string; options: Readonly<Record<string, string>> }>>;

type Name = keyof typeof OPTIONS;
const NAMES = Object.keys(OPTIONS) as Name[];

/** How this person reads and writes numbers; what is kept on this device. */
export function SettingsScreen() {
  const records = useRecords();
  return (
    <main>
      <h1>{say.title}</h1>
      <For each={NAMES}>
        {(name) => (
          <ChoiceField
            label={OPTIONS[name].label}
            options={Object.entries(OPTIONS[name].options).map(([id, label]) => ({ id, label }))}
            value={records.settings()[name]}
            onPick={(id) => void records.changeSettings({ [name]: id })}
          />
        )}
      </For>
      <StorageStatus />
      <Files store={records.store} />
      <p>
        <A href="/licences">{say.licences}</A>
      </p>
    </main>
  );
}
