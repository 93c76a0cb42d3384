import { createRequire } from 'node:module';
import { type Browser, firefox } from 'playwright-core';
import { FIREFOX } from './hold/firefox.ts';

/** What playwright asks of every context, and an installed Firefox may not know yet. */
const UNKNOWN = '"emulation.setMediaFeaturesOverride"';

interface Socket {
  prototype: { send(this: unknown, data: unknown, ...rest: unknown[]): unknown };
}

/**
 * The Firefox that is installed, over WebDriver BiDi: playwright's own build is not on every machine.
 * Colour schemes cannot be emulated there, and the question for them is turned into one that changes nothing.
 * @throws Error when there is no Firefox
 */
export async function launchFirefox(): Promise<Browser> {
  if (FIREFOX === undefined) throw new Error('There is no Firefox on this machine; FIREFOX_PATH names one.');
  const { ws } = createRequire(import.meta.url)('playwright-core/lib/utilsBundle') as { ws: Socket };
  const { send } = ws.prototype;
  ws.prototype.send = function (data, ...rest) {
    const asked = typeof data === 'string' && data.includes(UNKNOWN) ? (JSON.parse(data) as { id: number }) : null;
    return send.call(this, asked === null ? data : JSON.stringify({ id: asked.id, method: 'session.status', params: {} }), ...rest);
  };
  return firefox.launch({ channel: 'moz-firefox', executablePath: FIREFOX, headless: true });
}
