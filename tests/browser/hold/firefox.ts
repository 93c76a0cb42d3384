import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { connect, createServer, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const PLACES = [
  process.env['FIREFOX_PATH'],
  '/usr/bin/firefox-esr',
  '/usr/bin/firefox',
  '/Applications/Firefox.app/Contents/MacOS/firefox',
];

/** Where Firefox is installed on this machine; undefined when it is not. */
export const FIREFOX = PLACES.find((path) => path !== undefined && existsSync(path));

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as { port: number };
      server.close(() => resolve(port));
    });
  });
}

async function connected(port: number): Promise<Socket> {
  for (let tries = 0; tries < 300; tries++) {
    const socket = await new Promise<Socket | null>((resolve) => {
      const trying = connect(port, '127.0.0.1', () => resolve(trying));
      trying.once('error', () => resolve(null));
    });
    if (socket !== null) return socket;
    await new Promise((wait) => setTimeout(wait, 200));
  }
  throw new Error('Firefox did not open its port for tests');
}

/**
 * A Firefox with a profile of its own, driven over its Marionette protocol: each message is its length, a
 * colon and a JSON list. Source: the protocol's page in the Firefox source documentation, from memory.
 */
export class Firefox {
  private readonly process: ChildProcess;
  private readonly profile: string;
  private readonly socket: Socket;
  private readonly waiting = new Map<number, (answer: [unknown, unknown]) => void>();
  private heard = Buffer.alloc(0);
  private next = 1;

  private constructor(process: ChildProcess, profile: string, socket: Socket) {
    this.process = process;
    this.profile = profile;
    this.socket = socket;
    socket.on('data', (data: Buffer) => this.hear(data));
  }

  static async open(): Promise<Firefox> {
    const profile = mkdtempSync(join(tmpdir(), 'pullstack-firefox-'));
    const port = await freePort();
    writeFileSync(join(profile, 'user.js'), `user_pref('marionette.port', ${port});\n`);
    const args = ['--headless', '--no-remote', '--marionette', '--profile', profile];
    const started = spawn(FIREFOX!, args, { stdio: 'ignore', env: { ...process.env, HOME: profile } });
    const firefox = new Firefox(started, profile, await connected(port));
    await firefox.ask('WebDriver:NewSession', {});
    await firefox.ask('WebDriver:SetTimeouts', { script: 600_000, pageLoad: 120_000 });
    return firefox;
  }

  goto(url: string): Promise<unknown> {
    return this.ask('WebDriver:Navigate', { url });
  }

  /** Runs a function in the page, and gives what it resolves to. */
  async evaluate<Arg, Found>(work: (arg: Arg) => Promise<Found>, arg: Arg): Promise<Found> {
    const script = `const done = arguments[arguments.length - 1]; (${String(work)})(arguments[0]).then((found) => done({ found }), (error) => done({ error: String(error) }));`;
    const { value } = (await this.ask('WebDriver:ExecuteAsyncScript', { script, args: [arg] })) as {
      value: { found: Found; error?: string };
    };
    if (value.error !== undefined) throw new Error(value.error);
    return value.found;
  }

  async close(): Promise<void> {
    const gone = new Promise((resolve) => this.process.once('exit', resolve));
    this.socket.destroy();
    this.process.kill();
    await gone;
    rmSync(this.profile, { recursive: true, force: true, maxRetries: 5 });
  }

  private ask(command: string, parameters: object): Promise<unknown> {
    const id = this.next++;
    const text = JSON.stringify([0, id, command, parameters]);
    return new Promise((resolve, reject) => {
      this.waiting.set(id, ([error, result]) => (error === null ? resolve(result) : reject(new Error(JSON.stringify(error)))));
      this.socket.write(`${Buffer.byteLength(text)}:${text}`);
    });
  }

  private hear(data: Buffer): void {
    this.heard = Buffer.concat([this.heard, data]);
    for (;;) {
      const colon = this.heard.indexOf(':');
      const length = Number(this.heard.subarray(0, Math.max(0, colon)).toString());
      if (colon < 0 || this.heard.length < colon + 1 + length) return;
      const message = JSON.parse(this.heard.subarray(colon + 1, colon + 1 + length).toString()) as unknown;
      this.heard = this.heard.subarray(colon + 1 + length);
      // The first message only says hello.
      if (!Array.isArray(message)) continue;
      const [, id, error, result] = message as [number, number, unknown, unknown];
      this.waiting.get(id)?.([error, result]);
      this.waiting.delete(id);
    }
  }
}
