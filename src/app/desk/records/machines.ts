import { blankMachine, edited, type MachineEdit } from '../../../machine/edit';
import { machineKey } from '../../../machine/keys';
import type { Machine, Reading, Settings } from '../../../machine/schema';
import { fetchPart } from '../parts/fetch-part';
import type { Device } from './device';
import { undoable } from './removals';
import type { SettingRecords } from './settings';
import say from './words/en';

/** Machines: made, changed, removed. A new one goes on the bench. */
export function machineRecords(device: Device, { changeSettings, choose }: SettingRecords) {
  const { opened, told, machines, settings, bench, setTrouble } = device;
  const save = async (...records: readonly (Machine | Reading)[]): Promise<boolean> => {
    const result = await (await opened).save(...records);
    told(result);
    return result.ok;
  };
  /** To whoever begins with this version, nothing in it is news. */
  const beginner = () => (machines().length === 0 ? { seenVersion: __TRAMMEL_VERSION__ } : {});
  const putOn = async (id: string, seen: Partial<Settings>): Promise<void> => {
    await choose(id);
    if (seen.seenVersion !== undefined) await changeSettings(seen);
  };
  return {
    machines,
    /** @returns its id */
    addMachine: async (name: string): Promise<string> => {
      const machine = blankMachine(name, new Date());
      const seen = beginner();
      if (await save(machine)) await putOn(machine.id, seen);
      return machine.id;
    },
    /** The invented machine with its readings. @returns its id */
    addDemo: async (): Promise<string> => {
      const [{ demoMachine, demoCheck }, { demoReadings }, { loadCalculator }] = await fetchPart(() =>
        Promise.all([import('../../../machine/demo'), import('../demo-readings'), import('../../../engine/list')]),
      );
      const check = await fetchPart(() => loadCalculator(demoCheck));
      const seen = beginner();
      if (await save(demoMachine, ...(check ? demoReadings(check.calculator) : []))) await putOn(demoMachine.id, seen);
      return demoMachine.id;
    },
    /** @returns false where it was not changed, which the person has been told */
    changeMachine: async (id: string, edit: MachineEdit): Promise<boolean> => {
      const store = await opened;
      const result = await store.change(machineKey(id), (old) => (old ? edited(old, edit, new Date()) : undefined));
      if (told(result) === undefined && result.ok) setTrouble(say.machineGone);
      return result.ok && result.value !== undefined;
    },
    /** With all that is its. */
    removeMachine: async (id: string): Promise<boolean> => {
      const store = await opened;
      const name = machines().find((machine) => machine.id === id)?.name ?? id;
      const gone = undoable(device, say.removed.machine(name), await store.removeMachine(id));
      if (gone && bench.machine() === id) await choose(null);
      else if (gone && settings().machine === id) await changeSettings({ machine: null });
      return gone;
    },
  };
}
