import type { LogEvent, VisitHead } from '../../engine/log/types.ts';

export interface StoredProject {
  /** The saved sections, or null when nothing was saved yet. */
  project: unknown;
  /** False when another tab has the project open: then nothing is written. */
  writable: boolean;
}

/** What the storage worker does. */
export interface StorageApi {
  open(): Promise<StoredProject>;
  /** Writes the named sections in one transaction. */
  save(sections: Record<string, unknown>): Promise<void>;
  /** Puts unreadable data aside, so that nothing saved is lost. */
  setAside(reason: string): Promise<void>;
  /** The pull order that the press works from, in the parts in which it was saved. */
  openPress(): Promise<Record<string, unknown>>;
  /** Writes the named parts of it in one transaction. */
  savePress(parts: Record<string, unknown>): Promise<void>;
  /** Visits of which something was logged. */
  readVisits(): Promise<VisitHead[]>;
  /** What was logged of a visit, in no order. */
  readEvents(visit: string): Promise<LogEvent[]>;
  /** Adds events, in one transaction that ends when they are on the disk. */
  addEvents(head: VisitHead, events: readonly LogEvent[]): Promise<void>;
}
