import type { KeptHead, KeptKind, StoredProject } from '../api/storage-api.ts';
import { COPY_EVERY_MS, copiesToKeep } from './copy-times.ts';
import { openedOnce } from './storage-open.ts';

/** A database of its own, so that what is kept outlives the loss of the project's. */
const HEADS = 'heads';
const BODIES = 'bodies';

/** How many of a kind stay; what has no number here stays until the user drops it. */
const MOST: Partial<Record<KeptKind, number>> = { replaced: 20, bin: 20 };

const db = openedOnce('pullstack-kept', 'earlier copies', { [HEADS]: { keyPath: 'id' }, [BODIES]: {} });

async function heads(): Promise<KeptHead[]> {
  return (await db()).getAll(HEADS);
}

/** Heads of what is kept, the newest first. */
export async function listKept(): Promise<KeptHead[]> {
  return (await heads()).sort((a, b) => b.atMs - a.atMs || (a.id < b.id ? 1 : -1));
}

/** Keeps a project, in place of what is kept under its id; it is on the disk when this resolves. Of some kinds the oldest go when there are many. */
export async function keep(head: KeptHead, sections: Record<string, unknown>): Promise<void> {
  const most = MOST[head.kind];
  const others = most === undefined ? [] : (await listKept()).filter(({ kind, id }) => kind === head.kind && id !== head.id);
  const extra = most === undefined ? [] : others.slice(most - 1);
  const transaction = (await db()).transaction([HEADS, BODIES], 'readwrite', { durability: 'strict' });
  const [named, bodies] = [transaction.objectStore(HEADS), transaction.objectStore(BODIES)];
  void named.put(head);
  void bodies.put(sections, head.id);
  for (const { id } of extra) {
    void named.delete(id);
    void bodies.delete(id);
  }
  await transaction.done;
}

/** The sections of what was kept; null when it is gone. */
export async function readKept(id: string): Promise<Record<string, unknown> | null> {
  return ((await (await db()).get(BODIES, id)) as Record<string, unknown> | undefined) ?? null;
}

/** Drops what was kept, for good. */
export async function dropKept(id: string): Promise<void> {
  const transaction = (await db()).transaction([HEADS, BODIES], 'readwrite');
  void transaction.objectStore(HEADS).delete(id);
  void transaction.objectStore(BODIES).delete(id);
  await transaction.done;
}

let lastCopyMs: number | null = null;

/**
 * Keeps a copy of the project as it is saved, when the last copy is some minutes old, and thins the copies out.
 * That no copy could be made never stops the saving.
 */
export async function keepCopy(open: () => Promise<StoredProject>): Promise<void> {
  const now = Date.now();
  try {
    lastCopyMs ??= Math.max(0, ...(await heads()).filter(({ kind }) => kind === 'copy').map(({ atMs }) => atMs));
    // A clock that was set back since must not stop the copies.
    if (now >= lastCopyMs && now - lastCopyMs < COPY_EVERY_MS) return;
    const { project, unread } = await open();
    if (project === null || unread.length > 0) return;
    await keep({ id: `copy-${now}`, kind: 'copy', atMs: now, title: String(project['title'] ?? ''), reason: '' }, project);
    lastCopyMs = now;
    const copies = (await heads()).filter(({ kind }) => kind === 'copy');
    const stay = new Set(
      copiesToKeep(
        copies.map(({ atMs }) => atMs),
        now,
      ),
    );
    for (const { id, atMs } of copies) if (!stay.has(atMs)) await dropKept(id);
  } catch {
    // The project itself is saved all the same.
  }
}
