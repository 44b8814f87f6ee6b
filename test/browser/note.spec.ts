import AxeBuilder from '@axe-core/playwright';
import { chromium, expect, type Browser, type BrowserContextOptions, type Page } from '@playwright/test';
import { writeFileSync } from 'node:fs';
import { findBrowser } from './find-browser';
import { wavOf, type Recording } from './plucks';
import { field, test, unmarked, untilOffline } from './support';

/** In the fake recording, and so in the answer. */
const NOTE = 98.3;

const QUIET = ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking', '--disable-sync'];
const FAKE = ['--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream'];

let browser: Browser | undefined;

test.afterEach(async () => {
  await browser?.close();
  browser = undefined;
});

/** A page of its own browser: its microphone is a file, or what `flags` leave of one. */
async function open(
  flags: readonly string[],
  baseURL: string | undefined,
  options: BrowserContextOptions = {},
): Promise<Page> {
  browser = await chromium.launch({ ...findBrowser(), args: [...QUIET, ...flags] });
  const context = await browser.newContext({
    ...(baseURL === undefined ? {} : { baseURL }),
    viewport: { width: 360, height: 740 },
    hasTouch: true,
    ...options,
  });
  const page = await context.newPage();
  // What the page does with its microphone, to look at from here.
  await page.addInitScript(() => {
    const seen: { tracks: MediaStreamTrack[]; wanted: unknown[] } = { tracks: [], wanted: [] };
    Object.assign(window, { seen });
    const devices = navigator.mediaDevices as MediaDevices | undefined;
    const ask = devices?.getUserMedia.bind(devices);
    if (!devices || !ask) return;
    devices.getUserMedia = async (wanted) => {
      seen.wanted.push(wanted);
      const stream = await ask(wanted);
      seen.tracks.push(...stream.getTracks());
      return stream;
    };
  });
  return page;
}

/** A page whose microphone hears a recording over and over. */
function openHearing(
  recording: Recording,
  baseURL: string | undefined,
  options?: BrowserContextOptions,
): Promise<Page> {
  const file = test.info().outputPath('plucks.wav');
  writeFileSync(file, wavOf(recording));
  return open([...FAKE, `--use-file-for-fake-audio-capture=${file}`], baseURL, options);
}

const CLEAR: Recording = { notes: [NOTE, NOTE, NOTE, NOTE, NOTE, NOTE], noise: 0.003, loudness: 0.15 };

interface Seen {
  readonly tracks: readonly MediaStreamTrack[];
  readonly wanted: readonly unknown[];
}
const tracks = (page: Page): Promise<string[]> =>
  page.evaluate(() => (window as unknown as { seen: Seen }).seen.tracks.map((track) => track.readyState));

const key = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' });
const plucks = (page: Page) => page.locator('.note-plucks > li');
const listen = (page: Page) => key(page, 'Listen').click();

async function show(page: Page): Promise<void> {
  await page.goto('./#/phone/note');
  await expect(key(page, 'Listen')).toBeVisible();
}

/** Puts the page out of sight, or back: a headless browser never hides one. */
async function see(page: Page, state: 'hidden' | 'visible'): Promise<void> {
  await page.evaluate((now) => {
    Object.defineProperty(document, 'visibilityState', { value: now, configurable: true });
    document.dispatchEvent(new Event('visibilitychange'));
  }, state);
}

async function expectSound(page: Page, state: string): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    const { violations } = await new AxeBuilder({ page }).analyze();
    const nodes = violations.map((v) => `${v.id} ${v.nodes.map((n) => n.target.join(' ')).join(', ')}`);
    expect(nodes, `${state}, ${colorScheme}`).toEqual([]);
  }
  expect(await page.evaluate(() => document.documentElement.scrollWidth), state).toBeLessThanOrEqual(360);
  const small = await page
    .locator('button:visible, summary:visible, .choice-options label:visible')
    .evaluateAll((all) =>
      all
        .map((element) => ({ words: element.textContent, box: element.getBoundingClientRect() }))
        .filter(({ box }) => box.width < 47.5 || box.height < 47.5)
        .map(({ words }) => words),
    );
  expect(small, state).toEqual([]);
}

test('five plucks in the microphone fill the note of a belt in', async ({ baseURL }) => {
  const page = await openHearing(CLEAR, baseURL);
  const complaints: string[] = [];
  page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
  await page.goto('./#/check/belt-tension');
  const box = await field(page, 'Note of the plucked span');
  await key(page, 'Listen with the phone').click();
  const dialog = page.getByRole('dialog');
  await listen(page);
  await expect(dialog.getByText('Done: 5 plucks agree.')).toBeVisible();
  // Asked for untouched sound, and given back as soon as enough was heard.
  const { wanted } = await page.evaluate(() => ({ wanted: (window as unknown as { seen: Seen }).seen.wanted }));
  expect(wanted).toEqual([
    { audio: { autoGainControl: false, echoCancellation: false, noiseSuppression: false, channelCount: 1 } },
  ]);
  expect(await tracks(page)).toEqual(['ended']);

  const text = unmarked(await dialog.locator('.ear-result').innerText()).split('\n')[0] ?? '';
  const [, value, halfWidth] = /^([\d.]+) ± ([\d.]+)\sHz/.exec(text) ?? [];
  expect(Number(halfWidth), text).toBeGreaterThan(0);
  expect(Number(halfWidth), text).toBeLessThan(NOTE * 0.001);
  expect(Math.abs(Number(value) - NOTE), text).toBeLessThanOrEqual(Number(halfWidth));

  await key(page, 'Use as: Note of the plucked span').click();
  await expect(dialog).toBeHidden();
  await expect(box).toHaveValue(/^98\.\d+ ± [\d.]+$/);
  const [entered] = (await box.inputValue()).split(' ±');
  expect(Math.abs(Number(entered) - Number(value))).toBeLessThanOrEqual(Number(halfWidth));
  expect(complaints).toEqual([]);
});

test('an octave and another span are told apart; a pluck is struck off and another is listened for', async ({
  baseURL,
}) => {
  const page = await openHearing(
    { notes: [NOTE, NOTE, 2 * NOTE, NOTE, 120, NOTE, NOTE, NOTE], noise: 0.003, loudness: 0.15 },
    baseURL,
  );
  await show(page);
  await expectSound(page, 'before');
  await page.getByRole('radio', { name: '5' }).check();
  await listen(page);
  const octave = plucks(page).filter({ hasText: 'an octave above the others' }).first();
  await expect(octave).toBeVisible();
  await expectSound(page, 'listening');
  await expect(page.getByText('Done: 5 plucks agree.')).toBeVisible();
  await expect(plucks(page).filter({ hasText: 'another span' }).first()).toBeVisible();
  await expectSound(page, 'done');

  const used = plucks(page).filter({ has: page.getByText('used', { exact: true }) });
  const strike = await used
    .first()
    .getByRole('button', { name: /^Strike off/ })
    .getAttribute('aria-label');
  const strikeOff = unmarked(strike ?? '');
  const takeBack = strikeOff.replace('Strike off', 'Take back');
  await key(page, strikeOff).click();
  await expect(plucks(page).filter({ hasText: 'struck off' })).toHaveCount(1);
  await expect(page.locator('.ear-result')).toContainText('of 4 plucks');
  await key(page, takeBack).click();
  await expect(page.locator('.ear-result')).toContainText('of 5 plucks');
  await key(page, strikeOff).click();

  await octave.locator('.note-pluck').click();
  await expect(page.getByRole('img', { name: /^Spectrum of pluck \d: 196\.\d+\sHz/ })).toBeVisible();

  const before = await plucks(page).count();
  await key(page, 'Listen for 1 more').click();
  await expect(page.getByText('Done: 5 plucks agree.')).toBeVisible();
  expect(await plucks(page).count()).toBeGreaterThan(before);
  expect(await tracks(page)).toEqual(['ended', 'ended']);
});

test('the microphone is off while the page is out of sight and after the panel is closed', async ({ baseURL }) => {
  const page = await openHearing(CLEAR, baseURL);
  await show(page);
  await listen(page);
  await expect(page.locator('.ear-level')).toBeVisible();
  expect(await tracks(page)).toEqual(['live']);
  await see(page, 'hidden');
  await expect(page.getByText('the microphone is off until you are back')).toBeVisible();
  expect(await tracks(page)).toEqual(['ended']);
  await see(page, 'visible');
  await expect(page.locator('.ear-level')).toBeVisible();
  expect(await tracks(page)).toEqual(['ended', 'live']);
  await page.goto('./#/');
  await expect(page.locator('.note')).toHaveCount(0);
  expect(await tracks(page)).toEqual(['ended', 'ended']);
});

test('listening works with the server gone', async ({ baseURL }) => {
  const page = await openHearing(CLEAR, baseURL);
  await page.goto('./');
  await untilOffline(page);
  await page.context().setOffline(true);
  await show(page);
  await listen(page);
  await expect(
    plucks(page)
      .filter({ hasText: /98\.\d+\sHz/ })
      .first(),
  ).toBeVisible();
});

test('a microphone taken away, silenced, or worked on by the phone is said', async ({ baseURL }) => {
  const page = await openHearing(CLEAR, baseURL);
  await page.addInitScript(() => {
    const settings = Reflect.get<MediaStreamTrack, 'getSettings'>(MediaStreamTrack.prototype, 'getSettings');
    MediaStreamTrack.prototype.getSettings = function () {
      return { ...settings.call(this), autoGainControl: true, noiseSuppression: true };
    };
  });
  await show(page);
  await listen(page);
  await expect(page.getByText('This phone keeps its gain control and noise suppression on')).toBeVisible();
  await expect(page.getByText('its note may be named wrong')).toBeVisible();
  await expect(page.getByText('before the browser gets it is not known')).toBeVisible();
  const happen = (event: string, muted: boolean) =>
    page.evaluate(
      ([name, now]) => {
        const track = (window as unknown as { seen: Seen }).seen.tracks[0]!;
        Object.defineProperty(track, 'muted', { value: now, configurable: true });
        track.dispatchEvent(new Event(name));
      },
      [event, muted] as const,
    );
  await happen('mute', true);
  await expect(page.getByText('The phone has silenced the microphone')).toBeVisible();
  await expectSound(page, 'silenced');
  await happen('unmute', false);
  await expect(page.getByText('The phone has silenced the microphone')).toBeHidden();
  await happen('ended', false);
  await expect(page.getByText('The microphone was taken away while listening')).toBeVisible();
  await expect(page.getByText('can always be typed into the check')).toBeVisible();
  await expect(key(page, /^Listen/)).toBeVisible();
});

test('noise and no pluck give no note', async ({ baseURL }) => {
  const page = await openHearing({ notes: [], noise: 0.003, loudness: 0.15 }, baseURL);
  await show(page);
  await listen(page);
  await expect(page.locator('.ear-level')).toBeVisible();
  // By the sound's own clock, long enough for six plucks of the other recording.
  await page.evaluate(async () => {
    const { context } = Object.assign(window, { context: new AudioContext() });
    await context.resume();
  });
  const heard = () => page.evaluate(() => (window as unknown as { context: AudioContext }).context.currentTime);
  await expect.poll(heard).toBeGreaterThan(8);
  await expect(page.getByText('0 of 5')).toBeVisible();
  await expect(plucks(page).filter({ hasText: 'Hz' })).toHaveCount(0);
  // Told of plucks there were none of, it says that it heard no note, and offers the test that needs no ear.
  for (const many of [1, 2]) {
    // One that has just been listed is not looked for again: tapped so soon, the key waits.
    await expect(async () => {
      await key(page, 'Plucked now').click();
      await expect(plucks(page)).toHaveCount(many, { timeout: 3000 });
    }).toPass();
  }
  await expect(plucks(page).first()).toContainText('not used: ');
  await expectSound(page, 'told of plucks');
  await page.getByRole('link', { name: 'Press its middle instead' }).click();
  await expect(page.getByRole('radio', { name: /^pressing its middle/ })).toBeChecked();
});

test('permission refused', async ({ baseURL }) => {
  const page = await open(['--use-fake-device-for-media-stream'], baseURL);
  await show(page);
  await listen(page);
  await expect(page.getByRole('alert')).toContainText('The microphone was refused: allow it for this page');
  await expect(page.getByRole('alert')).toContainText('can always be typed into the check');
  await expectSound(page, 'refused');
});

test('no microphone', async ({ baseURL }) => {
  const page = await open([], baseURL, { permissions: ['microphone'] });
  await show(page);
  await listen(page);
  await expect(page.getByRole('alert')).toContainText('no microphone that the browser can find');
});

test('a page that came without encryption', async ({ baseURL }) => {
  const page = await open([], baseURL);
  await page.addInitScript(() => {
    Object.defineProperty(window, 'isSecureContext', { value: false });
    Object.defineProperty(navigator, 'mediaDevices', { value: undefined });
  });
  await show(page);
  await listen(page);
  await expect(page.getByRole('alert')).toContainText('open this page by its https address');
});

test('a microphone that another app has', async ({ baseURL }) => {
  const page = await open(FAKE, baseURL);
  await page.addInitScript(() => {
    navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('', 'NotReadableError'));
  });
  await show(page);
  await listen(page);
  await expect(page.getByRole('alert')).toContainText('Another app or call has the microphone');
});

test('sound that waits for a tap', async ({ baseURL }) => {
  const page = await openHearing(CLEAR, baseURL);
  await page.addInitScript(() => {
    // As some phones do: the context stays suspended until it is resumed from a tap.
    const resume = Reflect.get<AudioContext, 'resume'>(AudioContext.prototype, 'resume');
    let taps = 0;
    addEventListener('click', () => (taps += 1), true);
    AudioContext.prototype.resume = function () {
      return taps < 2 ? this.suspend() : resume.call(this);
    };
  });
  await show(page);
  await listen(page);
  await expect(page.getByRole('alert')).toContainText('holds the sound back until it is touched');
  await key(page, 'Go on').click();
  await expect(page.getByRole('alert')).toHaveCount(0);
  await expect(plucks(page).first()).toBeVisible();
});
