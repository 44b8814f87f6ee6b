import { answering, driving, started, type Command, type Send } from './driver';
import type { Opened } from './engine';

const at = (command: Command, id: unknown): readonly [method: 'GET' | 'POST' | 'DELETE', path: string] => {
  switch (command) {
    case 'new session':
    case 'delete session':
      return [command === 'new session' ? 'POST' : 'DELETE', ''];
    case 'navigate':
      return ['POST', '/url'];
    case 'execute script':
      return ['POST', '/execute/sync'];
    case 'click':
      return ['POST', `/element/${String(id)}/click`];
    case 'send keys':
      return ['POST', `/element/${String(id)}/value`];
    case 'screenshot':
      return ['GET', '/screenshot'];
  }
};

/** WebDriver over HTTP, as its section 6 has it. */
function sending(port: number): Send {
  let session = '';
  return async (command, given = {}) => {
    const { id, ...rest } = given;
    const [method, path] = at(command, id);
    const response = await fetch(`http://127.0.0.1:${port}/session${session}${path}`, {
      method,
      ...(method === 'POST' ? { body: JSON.stringify(rest) } : {}),
    });
    const { value } = (await response.json()) as {
      readonly value: { readonly message?: string; readonly sessionId?: string };
    };
    if (!response.ok) throw new Error(value.message ?? `HTTP ${response.status}`);
    if (command === 'new session') session = `/${String(value.sessionId)}`;
    return value;
  };
}

/** Opens WebKit's own small browser through its driver, on a screen of its own. */
export async function openWebKit(driver: string, browser: string, screen: string, port: number): Promise<Opened> {
  const display = `:${port}`;
  const shown = started(screen, [display, '-screen', '0', '800x800x24', '-nolisten', 'tcp']);
  const running = started(driver, [`--port=${port}`, '--host=127.0.0.1'], {
    ...process.env,
    DISPLAY: display,
    GDK_BACKEND: 'x11',
  });
  const end = () => {
    running.end();
    shown.end();
  };
  try {
    const send = sending(port);
    const options = { binary: browser, args: ['--automation'] };
    const asked = { capabilities: { alwaysMatch: { 'webkitgtk:browserOptions': options } } };
    const session = await answering(running.program, () => send('new session', asked));
    const { capabilities } = session as { readonly capabilities: { readonly browserVersion: string } };
    return { driver: driving(send), version: capabilities.browserVersion, end };
  } catch (error) {
    end();
    throw error;
  }
}
