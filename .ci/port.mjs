// Which port `npm start` uses, and whether it is free.
import { createServer } from 'node:net';

/** Another port is another origin to a browser, and another origin has another project. */
export const PORT = 5173;

/** The port that the options name, else the fixed one; NaN when it is no port. */
export function portOf(args) {
  const at = args.findIndex((arg) => arg === '--port' || arg.startsWith('--port='));
  if (at < 0) return PORT;
  const text = args[at].includes('=') ? args[at].slice('--port='.length) : (args[at + 1] ?? '');
  const port = /^\d{1,5}$/.test(text) ? Number(text) : Number.NaN;
  return port >= 1 && port <= 65_535 ? port : Number.NaN;
}

/** Whether something on this machine listens on a port, on either family of addresses. */
export async function portTaken(port) {
  const taken = await Promise.all(['127.0.0.1', '::1'].map((host) => takenAt(host, port)));
  return taken.includes(true);
}

function takenAt(host, port) {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once('error', (error) => resolve(error.code === 'EADDRINUSE'));
    probe.listen({ host, port, exclusive: true }, () => probe.close(() => resolve(false)));
  });
}

/** What to say of a port that cannot be used. */
export function portSentence(port) {
  return Number.isNaN(port)
    ? 'The port after --port is none; give a number from 1 to 65535, such as npm start -- --port 5174.'
    : `Port ${port} is taken, perhaps by another Pullstack that still runs: use that one, or end it. On another port the browser opens another project, as each address keeps its own; if you want that, run npm start -- --port ${port + 1}.`;
}
