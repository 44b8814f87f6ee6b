import { createContext, useContext } from 'solid-js';
import type { Records } from './records';

export const RecordsContext = createContext<Records>();

/** The records of this device. Only inside the app's shell. */
export function useRecords(): Records {
  const records = useContext(RecordsContext);
  if (!records) throw new Error('useRecords outside the shell');
  return records;
}
