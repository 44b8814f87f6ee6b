import { test as base, type BrowserContext } from '@playwright/test';
import { language } from '../../build/chosen';
import { isStyle } from '../../build/strange';
import { DEMO, leftovers, quotable, stringsIn, worksCited, type Seen } from '../support/leftovers';
import { watchPage, type Told } from './watch-page';

/** Name of the attachment that the reporter gathers. */
export const LEFTOVERS = 'leftovers';

const SHOWN = 30;

const works = isStyle(language) ? worksCited() : [];
let seen: Seen[] = [];
let given = new Set<string>();

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
};

/** A record that the test puts where the app finds it: its strings are no words of the app. */
export function give(value: unknown): void {
  for (const text of stringsIn(value)) given.add(text);
}

async function watch(context: BrowserContext): Promise<void> {
  await context.exposeBinding('tellOfWords', (_, told: Told) => {
    seen.push(...told.seen);
    give(told.given.map(parsed));
    if (told.link !== undefined) give(quotable(told.link));
  });
  await context.addInitScript(watchPage);
}

/**
 * The test of every browser spec. On a build whose words are made strange, each page of each browser is watched, and a
 * test fails on every word that no words file gave.
 */
export const test = base.extend<{ wordsFromFiles: undefined }, { everyContext: undefined }>({
  everyContext: [
    async ({ playwright }, use) => {
      const { chromium } = playwright;
      const launch = chromium.launch.bind(chromium);
      if (isStyle(language)) {
        chromium.launch = async (options) => {
          const browser = await launch(options);
          const open = browser.newContext.bind(browser);
          browser.newContext = async (wanted) => {
            const context = await open(wanted);
            await watch(context);
            return context;
          };
          return browser;
        };
      }
      await use(undefined);
    },
    { scope: 'worker', auto: true },
  ],
  wordsFromFiles: [
    async ({ everyContext }, use, info) => {
      seen = [];
      given = new Set();
      await use(everyContext);
      if (!isStyle(language)) return;
      const left = leftovers(seen, [...DEMO, ...works, ...given], language);
      if (left.length === 0) return;
      await info.attach(LEFTOVERS, { body: JSON.stringify(left), contentType: 'application/json' });
      const lines = left.map(
        ({ words, text, where, route }) => `${words.join(' ')} | in "${text}" | ${where} | ${route}`,
      );
      const more = lines.length > SHOWN ? [`and ${lines.length - SHOWN} more`] : [];
      throw new Error(`Words from no words file:\n${[...lines.slice(0, SHOWN), ...more].join('\n')}`);
    },
    { auto: true },
  ],
});
