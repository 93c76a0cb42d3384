import type { AppStore } from '../app-store.ts';
import { say } from '../words/en/keep/room.ts';

const ASKED = 'pullstack-persist-asked';

function once(): boolean {
  try {
    if (localStorage.getItem(ASKED) !== null) return false;
    localStorage.setItem(ASKED, '1');
    return true;
  } catch {
    return false;
  }
}

/** After the first real edit asks the browser, once, to keep the project also when space runs short. */
export function askToPersist(store: AppStore): void {
  const onChange = (): void => {
    if (store.undoLabel === null) return;
    store.removeEventListener('change', onChange);
    void ask(store);
  };
  store.addEventListener('change', onChange);
}

async function ask(store: AppStore): Promise<void> {
  const { storage } = navigator as { storage?: Partial<StorageManager> };
  if (storage?.persist === undefined || storage.persisted === undefined) return;
  try {
    if ((await storage.persisted()) || !once()) return;
    const asking = storage.persist();
    store.tell(say.browserMayAskWhether, 'news');
    await asking;
  } catch {
    // A browser that cannot be asked keeps things as long as it likes; the project menu says so.
  }
}
