import { serve } from '../api/serve.ts';
import type { StorageApi } from '../api/storage-api.ts';
import { dropKept, keep, listKept, readKept } from '../storage/storage-kept.ts';
import { addEvents, readEvents, readVisits } from '../storage/storage-log.ts';
import { lostPlaces } from '../storage/storage-open.ts';
import { readPress, writePress } from '../storage/storage-press.ts';
import { moveOldAside, openProject, replaceSections, saveSections } from '../storage/storage-project.ts';

const storage: StorageApi = {
  open: openProject,
  lost: lostPlaces,
  save: saveSections,
  replace: replaceSections,
  keep,
  async listKept() {
    try {
      await moveOldAside((reason, saved) => {
        const atMs = Date.now();
        return keep({ id: `aside-${atMs}-${Math.random()}`, kind: 'unreadable', atMs, title: String(saved['title'] ?? ''), reason }, saved);
      });
    } catch {
      // A project's database that cannot be opened takes nothing from what is kept.
    }
    return listKept();
  },
  readKept,
  dropKept,
  openPress: readPress,
  savePress: writePress,
  readVisits,
  readEvents,
  addEvents,
};

serve(storage);
