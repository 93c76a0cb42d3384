import './ui/paper.css';
import './ui/theme.css';
import { LESSON_FRAGMENT, SET_UP_FRAGMENT } from '../engine/visitfile/fragments.ts';
import { speakChosen } from './language.ts';

/** One set-up on a phone: neither the project nor what else the app is made of is loaded for it. */
async function showSetUp(): Promise<void> {
  const [{ readSetUpFragment }] = await Promise.all([import('../engine/visitfile/set-up-link.ts'), import('./phone/set-up-page.ts')]);
  const page = document.createElement('set-up-page');
  page.found = readSetUpFragment(location.hash);
  document.title = page.found.value?.title ?? document.title;
  document.body.append(page);
}

/** A lesson that someone gave: beside the project of whoever opens it, which is neither read nor written. */
async function showLesson(): Promise<void> {
  const [{ readLessonFragment }] = await Promise.all([
    import('../engine/visitfile/lesson-link.ts'),
    import('./lesson/link/lesson-page.ts'),
  ]);
  const page = document.createElement('lesson-page');
  page.found = readLessonFragment(location.hash);
  document.title = `Lesson · ${page.found.value?.sheet.title ?? 'Pullstack'}`;
  document.body.append(page);
}

async function showApp(): Promise<void> {
  const [{ boot }, { fetchRoom }, { FIRST_ROOM, roomAt }] = await Promise.all([
    import('./boot.ts'),
    import('./room-code.ts'),
    import('./rooms.ts'),
    import('./app-root.ts'),
  ]);
  // While the disk is read; that it did not come is told when the room is made.
  fetchRoom(roomAt(location.hash) ?? FIRST_ROOM).catch(() => undefined);
  const { store, saver } = await boot();
  const root = document.createElement('app-root');
  root.store = store;
  root.saver = saver;
  document.body.append(root);
}

/** What an address opens that is no room of the app. */
const PAGES = [
  { begins: SET_UP_FRAGMENT, show: showSetUp },
  { begins: LESSON_FRAGMENT, show: showLesson },
];

function pageOf(hash: string) {
  return PAGES.find(({ begins }) => hash.startsWith(begins));
}

const shown = pageOf(location.hash);
// Another address in the same tab: from a page of its own to the app, or back, or to another such page.
addEventListener('hashchange', () => {
  if (shown !== undefined || pageOf(location.hash) !== undefined) location.reload();
});
// No await at the top: a chunk loaded here may need this one, and each would wait for the other.
void speakChosen().then(shown?.show ?? showApp);
