import { createSignal, ErrorBoundary, Show } from 'solid-js';
import { HashRouter, Route } from '@solidjs/router';
import { RecordsContext } from '../desk/context';
import { RESCUE } from '../../rescue/call';
import { screen } from '../desk/parts/part';
import { createRecords, openLater } from '../desk/records';
import { Shell } from './shell';
import say from './words/en';

const Home = screen(async () => (await import('./home')).Home, say.parts.home);
const CalculatorScreen = screen(async () => (await import('../sheet/screen')).CalculatorScreen, say.parts.check);
const MachinesScreen = screen(async () => (await import('../machine/list-screen')).MachinesScreen, say.parts.machines);
const MachineScreen = screen(async () => (await import('../machine/screen')).MachineScreen, say.parts.machine);
const TuningSheet = screen(async () => (await import('../machine/tuning-sheet')).TuningSheet, say.parts.card);
const TrendScreen = screen(async () => (await import('../readings/trend-screen')).TrendScreen, say.parts.trend);
const ReadingScreen = screen(async () => (await import('../readings/screen')).ReadingScreen, say.parts.reading);
const PhoneScreen = screen(async () => (await import('../phone/screen')).PhoneScreen, say.parts.phone);
const CaseNew = screen(async () => (await import('../case/new')).CaseNew, say.parts.newCase);
const StopScreen = screen(async () => (await import('../case/stop-screen')).StopScreen, say.parts.stop);
const CaseArrival = screen(async () => (await import('../case/arrival')).CaseArrival, say.parts.arrival);
const CaseScreen = screen(async () => (await import('../case/screen')).CaseScreen, say.parts.case);
const CaseSheetScreen = screen(async () => (await import('../case/sheet-screen')).CaseSheetScreen, say.parts.caseSheet);
const SettingsScreen = screen(async () => (await import('./settings/screen')).SettingsScreen, say.parts.settings);
const Unknown = screen(async () => (await import('./unknown')).Unknown, say.parts.screen);
const LicencesScreen = screen(async () => (await import('./licences')).LicencesScreen, say.parts.licences);

/** Nothing of the app is left to say it: the page's own rescue does. */
const rescue = (error: unknown) => {
  reportError(error);
  setTimeout(() => window.dispatchEvent(new Event(RESCUE)));
  return null;
};

/** Without what reads and writes records, nothing that is typed would be kept. */
function raise(error: unknown): never {
  throw error;
}

/** Addresses stand in the fragment, so that any static host in any folder serves every one of them. */
export function App() {
  const [lost, setLost] = createSignal<{ readonly error: unknown }>();
  const opening = openLater();
  opening.catch((error: unknown) => setLost({ error }));
  const records = createRecords(opening);
  return (
    <RecordsContext.Provider value={records}>
      <ErrorBoundary fallback={rescue}>
        <Show when={lost()}>{(one) => raise(one().error)}</Show>
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
          <Route path="/licences" component={LicencesScreen} />
          <Route path="*" component={Unknown} />
        </HashRouter>
      </ErrorBoundary>
    </RecordsContext.Provider>
  );
}
