import { spawn } from 'node:child_process';
import { createServer, type Server } from 'node:net';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';

const START = fileURLToPath(new URL('../../.ci/start.mjs', import.meta.url));
let server: Server | null = null;

function take(host: string): Promise<number> {
  const taken = createServer();
  server = taken;
  return new Promise((resolve, reject) => {
    taken.once('error', reject);
    taken.listen(0, host, () => {
      const address = taken.address();
      if (address !== null && typeof address !== 'string') resolve(address.port);
    });
  });
}

function start(...args: string[]): Promise<{ code: number | null; said: string; printed: string }> {
  const child = spawn(process.execPath, [START, ...args]);
  let said = '';
  let printed = '';
  child.stderr.on('data', (data) => (said += String(data)));
  child.stdout.on('data', (data) => (printed += String(data)));
  return new Promise((resolve) => child.on('exit', (code) => resolve({ code, said, printed })));
}

afterEach(() => {
  server?.close();
});

describe('npm start', () => {
  it('should fail with one sentence, before anything else, when its port is taken', async () => {
    const port = await take('127.0.0.1');
    const { code, said, printed } = await start('--port', String(port));
    expect(code).toBe(1);
    expect(printed).toBe('');
    expect(said.trim().split('\n')).toHaveLength(1);
    expect(said).toContain(`Port ${port} is taken`);
    expect(said).toContain('another project');
    expect(said).toContain(`npm start -- --port ${port + 1}`);
  });

  it('should say so of a port that is none', async () => {
    const { code, said } = await start('--port=many');
    expect(code).toBe(1);
    expect(said).toMatch(/^The port after --port is none; give a number/);
  });
});
