// Installs what is missing and opens the app, always at the same address: each address has a project of its own.
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { installPackages, ROOT } from './install.mjs';
import { portOf, portSentence, portTaken } from './port.mjs';

const port = portOf(process.argv.slice(2));
if (Number.isNaN(port) || (await portTaken(port))) {
  console.error(portSentence(port));
  process.exit(1);
}
installPackages();
const canOpen = process.env.CI === undefined && (process.platform !== 'linux' || process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
const fixed = ['--port', String(port), '--strictPort'];
const args = [join(ROOT, 'node_modules/vite/bin/vite.js'), ...(canOpen ? ['--open'] : []), ...process.argv.slice(2), ...fixed];
if (!canOpen) console.log('No display here: open the address below in a browser.');
const server = spawn(process.execPath, args, { cwd: ROOT, stdio: 'inherit' });
server.on('exit', (code) => process.exit(code ?? 0));
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => server.kill(signal));
