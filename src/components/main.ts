import './ui/paper.css';
import './ui/theme.css';
import { readSetUpFragment, SET_UP_FRAGMENT } from '../engine/visitfile/set-up-link.ts';

/** One set-up on a phone: neither the project nor what else the app is made of is loaded for it. */
async function showSetUp(): Promise<void> {
  await import('./phone/set-up-page.ts');
  const page = document.createElement('set-up-page');
  page.found = readSetUpFragment(location.hash);
  document.title = page.found.value?.title ?? document.title;
  document.body.append(page);
}

async function showApp(): Promise<void> {
  const [{ boot }] = await Promise.all([import('./boot.ts'), import('./app-root.ts')]);
  const { store, saver } = await boot();
  const root = document.createElement('app-root');
  root.store = store;
  root.saver = saver;
  document.body.append(root);
}

await (location.hash.startsWith(SET_UP_FRAGMENT) ? showSetUp() : showApp());
