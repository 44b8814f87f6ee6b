import { lazy } from 'solid-js';
import { HashRouter, Route } from '@solidjs/router';
import { RecordsContext } from '../desk/context';
import { createRecords } from '../desk/records';
import { Shell } from './shell';

const Home = lazy(async () => ({ default: (await import('./home')).Home }));
const CalculatorScreen = lazy(async () => ({ default: (await import('../sheet/screen')).CalculatorScreen }));
const MachinesScreen = lazy(async () => ({ default: (await import('../machine/list-screen')).MachinesScreen }));
const MachineScreen = lazy(async () => ({ default: (await import('../machine/screen')).MachineScreen }));
const TuningSheet = lazy(async () => ({ default: (await import('../machine/tuning-sheet')).TuningSheet }));
const TrendScreen = lazy(async () => ({ default: (await import('../readings/trend-screen')).TrendScreen }));
const ReadingScreen = lazy(async () => ({ default: (await import('../readings/screen')).ReadingScreen }));
const PhoneScreen = lazy(async () => ({ default: (await import('../phone/screen')).PhoneScreen }));
const CaseNew = lazy(async () => ({ default: (await import('../case/new')).CaseNew }));
const StopScreen = lazy(async () => ({ default: (await import('../case/stop-screen')).StopScreen }));
const CaseArrival = lazy(async () => ({ default: (await import('../case/arrival')).CaseArrival }));
const CaseScreen = lazy(async () => ({ default: (await import('../case/screen')).CaseScreen }));
const CaseSheetScreen = lazy(async () => ({ default: (await import('../case/sheet-screen')).CaseSheetScreen }));
const SettingsScreen = lazy(async () => ({ default: (await import('./settings/screen')).SettingsScreen }));

/** Addresses stand in the fragment, so that any static host in any folder serves every one of them. */
export function App() {
  const records = createRecords();
  return (
    <RecordsContext.Provider value={records}>
      <HashRouter root={Shell}>
        <Route path="/" component={Home} />
        <Route path="/check/:id" component={CalculatorScreen} />
        <Route path="/phone/:instrument" component={PhoneScreen} />
        <Route path="/machines" component={MachinesScreen} />
        <Route path="/machines/:id" component={MachineScreen} />
        <Route path="/machines/:id/card" component={TuningSheet} />
        <Route path="/machines/:id/check/:check" component={TrendScreen} />
        <Route path="/machines/:id/reading/:taken" component={ReadingScreen} />
        <Route path="/case/new" component={CaseNew} />
        <Route path="/stop" component={StopScreen} />
        <Route path="/case/link" component={CaseArrival} />
        <Route path="/case/:machine/:id" component={CaseScreen} />
        <Route path="/case/:machine/:id/sheet" component={CaseSheetScreen} />
        <Route path="/settings" component={SettingsScreen} />
        <Route path="*" component={Home} />
      </HashRouter>
    </RecordsContext.Provider>
  );
}
