import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openStudio, type Studio } from '../harness.ts';

let studio: Studio;
let other: Server;
/** What another host on this machine heard: every byte that came. */
const heard: string[] = [];
/** How often somebody so much as opened a line to it. */
let lines = 0;
let host = '';

beforeAll(async () => {
  studio = await openStudio();
  other = createServer((_request, response) => response.end('heard'));
  other.on('connection', (socket) => {
    lines++;
    socket.on('data', (bytes) => heard.push(String(bytes).split('\r\n')[0]!));
  });
  await new Promise<void>((done) => {
    other.listen(0, '127.0.0.1', done);
  });
  host = `127.0.0.1:${(other.address() as AddressInfo).port}`;
});

afterAll(async () => {
  await studio?.close();
  other?.close();
});

/** What a page could try, by name; each runs in the page with the address of the other host. */
const WAYS: Record<string, (host: string) => void> = {
  fetch: (at) => void fetch(`http://${at}/fetch`, { mode: 'no-cors' }).catch(() => {}),
  WebSocket: (at) => void new WebSocket(`ws://${at}/socket`),
  beacon: (at) => void navigator.sendBeacon(`http://${at}/beacon`, 'x'),
  XMLHttpRequest: (at) => {
    const request = new XMLHttpRequest();
    request.open('GET', `http://${at}/request`);
    request.send();
  },
  EventSource: (at) => void new EventSource(`http://${at}/events`),
  img: (at) => {
    new Image().src = `http://${at}/picture.png`;
  },
  script: (at) => {
    const script = document.createElement('script');
    script.src = `http://${at}/script.js`;
    document.head.append(script);
  },
  style: (at) => {
    const link = document.createElement('link');
    link.rel = 'stylesheet';
    link.href = `http://${at}/style.css`;
    document.head.append(link);
  },
  iframe: (at) => {
    const frame = document.createElement('iframe');
    frame.src = `http://${at}/frame`;
    document.body.append(frame);
  },
  form: (at) => {
    const form = document.createElement('form');
    form.action = `http://${at}/form`;
    form.method = 'post';
    document.body.append(form);
    form.submit();
  },
};

describe('the built page', () => {
  it('should refuse to tell another host anything', async () => {
    const context = await studio.browser.newContext();
    const page = await context.newPage();
    await page.goto(`${studio.url}#chest`);
    await page.getByRole('navigation', { name: 'Rooms' }).waitFor();
    let refused: string[] = [];
    page.on('console', (message) => {
      if (/violates the following Content Security Policy directive/.test(message.text())) refused.push(message.text());
    });
    for (const [name, way] of Object.entries(WAYS)) {
      refused = [];
      heard.length = 0;
      lines = 0;
      await page.evaluate(way, host);
      await expect.poll(() => refused.length, { message: name }).toBeGreaterThan(0);
      // Time in which a request that got through would have arrived.
      await page.waitForTimeout(300);
      expect(heard, name).toEqual([]);
      // Chromium opens a line before it asks whether a page or a frame may go there; it sends nothing on it.
      if (name !== 'form' && name !== 'iframe') expect(lines, name).toBe(0);
      expect(page.url().startsWith(studio.url), name).toBe(true);
    }
    await context.close();
  });

  it('should not let its addresses be turned elsewhere', async () => {
    const context = await studio.browser.newContext();
    const page = await context.newPage();
    await page.goto(`${studio.url}#chest`);
    const base = await page.evaluate((at) => {
      const element = document.createElement('base');
      element.href = `http://${at}/`;
      document.head.append(element);
      return document.baseURI;
    }, host);
    expect(base.startsWith(studio.url)).toBe(true);
    await context.close();
  });

  it('should be refused by the page, not by a host that is deaf', async () => {
    heard.length = 0;
    lines = 0;
    await (await fetch(`http://${host}/fetch`)).text();
    expect(heard).toEqual(['GET /fetch HTTP/1.1']);
    expect(lines).toBe(1);
  });

  it('should bring its licences along', async () => {
    const text = await (await fetch(`${studio.url}licences.txt`)).text();
    expect(text).toMatch(/^Pullstack\n\nMIT License/);
    const context = await studio.browser.newContext();
    const page = await context.newPage();
    await page.goto(`${studio.url}#chest`);
    await page.getByTitle(/^Project: /).click();
    const link = page.getByRole('link', { name: 'Licences' });
    expect(await link.evaluate((element: HTMLAnchorElement) => element.href)).toBe(`${studio.url}licences.txt`);
    await context.close();
  });
});
