import AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { enter, field, test, unmarked } from './support';

/** A made-up phone: what its sensor says is worked out in the page from how it lies. */
interface Lie {
  /** Slope of what it lies on, right end high positive, m/m; and across. */
  slope: number;
  across: number;
  turned: boolean;
  /** As some browsers have it: all signs the other way round. */
  sign: 1 | -1;
  /** Numbers in these steps, m/s²; 0 for fine ones. */
  step: number;
  shaking: boolean;
  attitude: boolean;
}

const LIE: Lie = { slope: 0, across: 0.004, turned: false, sign: 1, step: 0, shaking: false, attitude: false };

/** Sends motion events sixty times a second: gravity by whole vectors, a sensor's own error of 21 and −13 mm/m, noise. */
async function startPhone(page: Page): Promise<void> {
  await page.addInitScript((start) => {
    const state = { ...start, sent: 0 };
    Object.assign(window, { lie: state });
    let seed = 12345;
    const uniform = () => (seed = (seed * 16807) % 2147483647) / 2147483647;
    const noise = (sd: number) => sd * Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    const rounded = (v: number) => (state.step > 0 ? Math.round(v / state.step) * state.step : v);
    setInterval(() => {
      const [along, across] = [Math.sin(Math.atan(state.slope)), Math.sin(Math.atan(state.across))];
      const turn = state.turned ? -1 : 1;
      const shake = state.shaking ? noise(1) : 0;
      const z = Math.sqrt(1 - along ** 2 - across ** 2) * 9.81;
      // Earpiece to the right: y along the bar, so x points to the person.
      const y = turn * along * 9.81 + 0.206 + noise(0.02) + shake;
      const x = turn * across * 9.81 - 0.128 + noise(0.02) + shake;
      const init = {
        accelerationIncludingGravity: {
          x: state.sign * rounded(x),
          y: state.sign * rounded(y),
          z: state.sign * rounded(z + noise(0.02)),
        },
        interval: 16,
      };
      window.dispatchEvent(new DeviceMotionEvent('devicemotion', init));
      state.sent += 1;
      if (!state.attitude) return;
      // The angles come smoothed, as from a filter that joins several sensors, and rounded to a tenth.
      const deg = (v: number) => Math.round(((v + noise(2e-4)) * 1800) / Math.PI) / 10;
      const [beta, gamma] = [turn * along + 0.021 + shake / 10, -(turn * across - 0.013)];
      const angles = { alpha: state.turned ? 200 : 20, beta: deg(beta), gamma: deg(gamma) };
      window.dispatchEvent(new DeviceOrientationEvent('deviceorientation', angles));
    }, 1000 / 60);
  }, LIE);
}

const lay = (page: Page, how: Partial<Lie>) =>
  page.evaluate((change) => {
    Object.assign((window as unknown as { lie: object }).lie, change);
  }, how);

/** How many readings of the sensor the page has been given. */
const sent = (page: Page): Promise<number> =>
  page.evaluate(() => (window as unknown as { lie: { sent: number } }).lie.sent);

const read = async (page: Page) => {
  await page.getByRole('button', { name: 'Read', exact: true }).click();
  await expect(page.getByText('Still. Reading, hands off…')).toBeVisible();
};
const onSecond = (page: Page) => expect(page.getByRole('heading', { name: 'Second reading' })).toBeVisible();
const onResult = (page: Page) => expect(page.locator('.level-value')).toBeVisible();

/** "2.31 ± 0.40 mm/m", and as typed into a field. */
function measured(text: string): { value: number; half: number } {
  const [value, half] = text
    .replace('−', '-')
    .split('±')
    .map((part) => Number.parseFloat(part));
  return { value: value!, half: half! };
}

async function pair(page: Page): Promise<void> {
  await lay(page, { turned: false });
  await read(page);
  await onSecond(page);
  await lay(page, { turned: true });
  await read(page);
  await onResult(page);
}

async function openOnSheet(page: Page): Promise<void> {
  await startPhone(page);
  await page.goto('./#/check/two-z-screws');
  await page.getByText('slope of the gantry, with the level').click();
  await field(page, 'Slope of the gantry');
  await page.getByRole('button', { name: 'Lay the phone on it' }).first().click();
  await page.getByRole('button', { name: 'Start the level' }).click();
}

test('from two readings to the verdict of dual-Z sync, the sensor’s own error gone', async ({ page }) => {
  await openOnSheet(page);
  await lay(page, { slope: 0.0062 });
  await pair(page);
  await expect(page.getByText('the right end is high.')).toBeVisible();
  const shown = measured(await page.locator('.level-value').innerText());
  expect(Math.abs(shown.value - 6.2)).toBeLessThanOrEqual(shown.half);
  // A laying of ± 1 mm/m leaves ± 0.71 for a pair; a wide ± would cover anything.
  expect(shown.half).toBeLessThan(1.2);
  await page.getByText('What the ± is made of').click();
  const zero = measured(unmarked(await page.getByText('The sensor’s own error').innerText()).replace(/^.*here:/s, ''));
  // 0.206 / 9.81.
  expect(Math.abs(zero.value - 21)).toBeLessThan(zero.half);
  await page.getByRole('button', { name: /^Use as: Slope of the gantry/ }).click();
  const box = await field(page, 'Slope of the gantry');
  const taken = measured(await box.inputValue());
  expect(taken).toEqual(shown);
  await enter(page, 'Slope of the frame below', '1 ± 0.1');
  // (6.2 − 1) mm/m over 400 mm is 2.08 mm: far beyond a quarter of a first layer.
  await expect(page.getByRole('complementary', { name: 'Verdict and instruction' })).toContainText(
    'The right side, seen from the front, is high',
  );
});

test('a browser with all signs the other way round names the same end', async ({ page }) => {
  await openOnSheet(page);
  await lay(page, { slope: -0.01, sign: -1 });
  await pair(page);
  await expect(page.getByText('the left end is high.')).toBeVisible();
  const shown = measured(await page.locator('.level-value').innerText());
  expect(Math.abs(shown.value + 10)).toBeLessThanOrEqual(shown.half);
});

test('numbers in steps of 0.1 m/s²: the angles are taken instead, and the ± holds and says why', async ({ page }) => {
  await openOnSheet(page);
  await lay(page, { slope: 0.0062, step: 0.1, attitude: true });
  await pair(page);
  const shown = measured(await page.locator('.level-value').innerText());
  expect(Math.abs(shown.value - 6.2)).toBeLessThanOrEqual(shown.half);
  await expect(page.getByText('Most of the ± is the steps')).toBeVisible();
  // Steps of 0.1 m/s² alone would leave ± 4.2 mm/m.
  expect(shown.half).toBeLessThan(3);
});

test('a phone that was not turned is found out, a shaken one is waited for', async ({ page }) => {
  await openOnSheet(page);
  await lay(page, { slope: 0.0062, attitude: true, shaking: true });
  await page.getByRole('button', { name: 'Read', exact: true }).click();
  await expect(page.getByText('Moving: wait for it to lie still…')).toBeVisible();
  // For as many readings as a quiet phone would have been read in, it goes on waiting.
  const begun = await sent(page);
  await expect.poll(() => sent(page)).toBeGreaterThan(begun + 200);
  await expect(page.getByText('Moving: wait for it to lie still…')).toBeVisible();
  await lay(page, { shaking: false });
  await onSecond(page);
  await read(page);
  await expect(page.getByText('turned by 0°, not by half a turn')).toBeVisible();
  await expect(page.locator('.level-value')).toHaveCount(0);
});

test('without a sensor: a sentence, and typing works', async ({ page }) => {
  await page.goto('./#/phone/slope');
  await page.getByRole('button', { name: 'Start the level' }).click();
  const none = page.getByText('No numbers come from a motion sensor');
  await expect(none.or(page.getByText('keeps the motion sensor back'))).toBeVisible();
  await expect(page.getByText('A slope can always be typed by hand')).toBeVisible();
});

test('refused, as a phone that asks does', async ({ page }) => {
  await page.addInitScript(() => {
    Object.assign(DeviceMotionEvent, { requestPermission: () => Promise.resolve('denied') });
  });
  await page.goto('./#/phone/slope');
  await page.getByRole('button', { name: 'Start the level' }).click();
  await expect(page.getByText('The motion sensor was refused.')).toBeVisible();
});

for (const scheme of ['light', 'dark'] as const) {
  test(`the level with a result: nothing for axe, no sideways scroll, keys for thumbs, ${scheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: scheme });
    await startPhone(page);
    await page.goto('./#/phone/slope');
    await page.getByRole('button', { name: 'Start the level' }).click();
    await lay(page, { slope: 0.0062, across: 0.03 });
    await pair(page);
    await page.evaluate(() => document.querySelectorAll('details').forEach((fold) => (fold.open = true)));
    await page.getByLabel('One laying differs').fill('x');
    await expect(page.getByText('Until then 1 is taken')).toBeVisible();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map((v) => `${v.id} ${v.nodes.map((n) => n.target.join(' ')).join(', ')}`)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('main button, main summary, main input')]
        .map((element) => ({ text: element.textContent, box: element.getBoundingClientRect() }))
        .filter(({ box }) => box.width < 47.5 || box.height < 47.5)
        .map(({ text }) => text),
    );
    expect(small).toEqual([]);
    if (process.env.SHOTS) {
      await page.screenshot({ path: `${process.env.SHOTS}/level-${scheme}-360.png`, fullPage: true });
      await page.setViewportSize({ width: 1280, height: 800 });
      await page.screenshot({ path: `${process.env.SHOTS}/level-${scheme}-1280.png`, fullPage: true });
    }
    await page.getByRole('button', { name: 'Use in a check' }).click();
    await page.getByRole('button', { name: 'Two Z screws in step' }).click();
    const box = await field(page, 'Slope of the gantry');
    expect(Math.abs(measured(await box.inputValue()).value - 6.2)).toBeLessThan(2.5);
  });
}
