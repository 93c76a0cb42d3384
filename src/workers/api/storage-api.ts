import type { VisitHead } from '../../engine/log/types.ts';

/** The saved project as it lies in the browser, unchecked. */
export interface StoredProject {
  /** The saved sections, or null when nothing was saved yet. */
  project: Record<string, unknown> | null;
  /** Sections that the browser itself could not read. */
  unread: string[];
}

/** Why a project was kept beside the open one: a project of the list is one of the user's own, to go on with; the bin is emptied from its end. */
export type KeptKind = 'project' | 'bin' | 'copy' | 'unreadable' | 'replaced';

/** A project kept beside the open one, without its content. */
export interface KeptHead {
  id: string;
  kind: KeptKind;
  /** When it was kept, ms since 1970 UTC, by the clock of the device. */
  atMs: number;
  title: string;
  /** Why, in a sentence; '' for a copy; what is in it, for a project of the list. */
  reason: string;
}

/** What the storage worker does. */
export interface StorageApi {
  open(): Promise<StoredProject>;
  /** What was kept in databases that had lost their stores, which were made again; words for a sentence. */
  lost(): Promise<string[]>;
  /** Writes the named sections in one transaction; now and then a copy of what was there is kept before. */
  save(sections: Record<string, unknown>): Promise<void>;
  /** Writes these sections in place of all that is there, in one transaction. */
  replace(sections: Record<string, unknown>): Promise<void>;
  /** Keeps a project beside the open one; on the disk when it resolves. */
  keep(head: KeptHead, sections: Record<string, unknown>): Promise<void>;
  /** What is kept, the newest first. */
  listKept(): Promise<KeptHead[]>;
  /** The sections of a kept project; null when it is gone. */
  readKept(id: string): Promise<Record<string, unknown> | null>;
  dropKept(id: string): Promise<void>;
  /** The pull order that the press works from, in the parts in which it was saved. */
  openPress(): Promise<Record<string, unknown>>;
  /** Writes the named parts of it in one transaction. */
  savePress(parts: Record<string, unknown>): Promise<void>;
  /** Visits of which something was logged, unchecked. */
  readVisits(): Promise<unknown[]>;
  /** What was logged of a visit, in no order, unchecked. */
  readEvents(visit: string): Promise<unknown[]>;
  /** Adds events, in one transaction that ends when they are on the disk. */
  addEvents(head: VisitHead, events: readonly unknown[]): Promise<void>;
}
