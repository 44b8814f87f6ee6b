import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { connect, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { answering, driving, started, type Command, type Send } from './driver';
import type { Opened } from './engine';

/** Marionette, the door that Firefox itself has for WebDriver: one JSON message after its length, over TCP. */
const NAMES: Readonly<Record<Command, string>> = {
  'new session': 'WebDriver:NewSession',
  navigate: 'WebDriver:Navigate',
  'execute script': 'WebDriver:ExecuteScript',
  click: 'WebDriver:ElementClick',
  'send keys': 'WebDriver:ElementSendKeys',
  screenshot: 'WebDriver:TakeScreenshot',
  'delete session': 'WebDriver:DeleteSession',
};

const dialled = (port: number): Promise<Socket> =>
  new Promise((resolve, reject) => {
    const socket = connect(port, '127.0.0.1', () => resolve(socket));
    socket.once('error', reject);
  });

type Answer = readonly [kind: number, id: number, error: { readonly message: string } | null, result: unknown];

/** Cuts the stream into messages and hands each to whoever waits for its number. */
function sending(socket: Socket): Send {
  let held = Buffer.alloc(0);
  let count = 0;
  const waiting = new Map<number, (answer: Answer) => void>();
  socket.on('data', (piece) => {
    held = Buffer.concat([held, piece]);
    for (;;) {
      const colon = held.indexOf(':');
      const length = Number(held.subarray(0, Math.max(0, colon)).toString());
      if (colon < 1 || held.length < colon + 1 + length) return;
      const message = JSON.parse(held.subarray(colon + 1, colon + 1 + length).toString()) as Answer;
      held = held.subarray(colon + 1 + length);
      if (Array.isArray(message)) waiting.get(message[1])?.(message);
    }
  });
  return (command, given = {}) =>
    new Promise((resolve, reject) => {
      count += 1;
      const text = JSON.stringify([0, count, NAMES[command], command === 'screenshot' ? { full: false } : given]);
      waiting.set(count, ([, , error, result]) => {
        if (error) reject(new Error(error.message));
        else
          resolve(
            (result as { readonly value?: unknown } | null)?.value ?? (command === 'new session' ? result : null),
          );
      });
      socket.write(`${Buffer.byteLength(text)}:${text}`);
    });
}

/** Opens Firefox with a profile of its own. */
export async function openFirefox(program: string, port: number): Promise<Opened> {
  const profile = mkdtempSync(join(tmpdir(), 'trammel-firefox-'));
  writeFileSync(join(profile, 'user.js'), `user_pref('marionette.port', ${port});\n`);
  const running = started(program, [
    '--headless',
    '--no-remote',
    '--marionette',
    '--profile',
    profile,
    '--width',
    '360',
    '--height',
    '740',
  ]);
  const end = () => {
    running.end();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  };
  try {
    const send = sending(await answering(running.program, () => dialled(port)));
    const session = (await send('new session', {})) as { readonly capabilities: { readonly browserVersion: string } };
    return { driver: driving(send), version: session.capabilities.browserVersion, end };
  } catch (error) {
    end();
    throw error;
  }
}
