import { spawn, type ChildProcess } from 'node:child_process';
import { setTimeout as later } from 'node:timers/promises';

/*
 * W3C WebDriver (https://www.w3.org/TR/webdriver2/), as far as the smoke of other engines needs it: this project's own
 * driver of tests runs patched builds of them only, and those cannot be had everywhere.
 */

/** Sends one command of WebDriver. @throws Error with the engine's own words */
export type Send = (command: Command, given?: Readonly<Record<string, unknown>>) => Promise<unknown>;

export type Command =
  'new session' | 'navigate' | 'execute script' | 'click' | 'send keys' | 'screenshot' | 'delete session';

/** How an element is told in WebDriver, section 12.2. */
const ELEMENT = 'element-6066-11e4-a52e-4f735466cecf';

export interface Driver {
  readonly go: (url: string) => Promise<void>;
  readonly refresh: () => Promise<void>;
  /** Runs in the page, once. */
  readonly now: (script: string, ...given: readonly unknown[]) => Promise<unknown>;
  /** Runs in the page, again and again until it gives something. @throws Error naming `what`, when it never does */
  readonly until: <T>(what: string, script: string, ...given: readonly unknown[]) => Promise<T>;
  /** A person's click or typing on what the script finds, scrolled to. */
  readonly click: (what: string, script: string, ...given: readonly unknown[]) => Promise<void>;
  readonly type: (text: string, script: string, ...given: readonly unknown[]) => Promise<void>;
  readonly screenshot: () => Promise<Buffer>;
}

const PATIENCE_MS = 30_000;
const PAUSE_MS = 100;

const elementIn = (found: unknown): string => {
  const id = (found as Readonly<Record<string, unknown>> | null)?.[ELEMENT];
  if (typeof id !== 'string') throw new Error(`no element: ${JSON.stringify(found)}`);
  return id;
};

export function driving(send: Send): Driver {
  const run = (script: string, given: readonly unknown[]) => send('execute script', { script, args: given });
  const until = async <T>(what: string, script: string, ...given: readonly unknown[]): Promise<T> => {
    const end = Date.now() + PATIENCE_MS;
    for (;;) {
      const found = await run(script, given);
      if (found !== null && found !== undefined && found !== false) return found as T;
      if (Date.now() > end)
        throw new Error(
          `never came: ${what}; the page says: ${String(await run('return document.body.innerText', []))}`,
        );
      await later(PAUSE_MS);
    }
  };
  const acted = async (
    what: string,
    script: string,
    given: readonly unknown[],
    act: (id: string) => Promise<unknown>,
  ) => {
    const end = Date.now() + PATIENCE_MS;
    for (;;) {
      const id = elementIn(await until(what, script, ...given));
      try {
        await run('arguments[0].scrollIntoView({ block: "center" })', [{ [ELEMENT]: id }]);
        await act(id);
        return;
      } catch (error) {
        // It was made anew, or something still lies over it.
        if (Date.now() > end) throw error;
        await later(PAUSE_MS);
      }
    }
  };
  return {
    go: async (url) => {
      await send('navigate', { url });
    },
    // As the page itself does it: the command of one engine goes past the worker.
    refresh: async () => {
      await run('window.old = true; setTimeout(() => location.reload())', []);
      await until('the page anew', 'return window.old === undefined && document.readyState === "complete"');
    },
    now: (script, ...given) => run(script, given),
    until,
    click: (what, script, ...given) => acted(what, script, given, (id) => send('click', { id })),
    type: (text, script, ...given) =>
      acted(`where to type ${text}`, script, given, (id) => send('send keys', { id, text })),
    screenshot: async () => Buffer.from(String(await send('screenshot')), 'base64'),
  };
}

/** Asks again until something answers: a program that was just started takes its time. */
export async function answering<T>(program: ChildProcess, ask: () => Promise<T>): Promise<T> {
  const end = Date.now() + PATIENCE_MS;
  for (;;) {
    try {
      return await ask();
    } catch (error) {
      if (program.exitCode !== null) throw new Error(`it ended with ${program.exitCode}`, { cause: error });
      if (Date.now() > end) throw error;
      await later(PAUSE_MS);
    }
  }
}

/** A program of its own group, so that what it starts ends with it. */
export function started(command: string, args: readonly string[], env: NodeJS.ProcessEnv = process.env) {
  const program = spawn(command, args, { stdio: 'ignore', detached: true, env });
  const end = () => {
    try {
      if (program.pid !== undefined) process.kill(-program.pid, 'SIGKILL');
    } catch {
      // It has ended already.
    }
  };
  return { program, end };
}
