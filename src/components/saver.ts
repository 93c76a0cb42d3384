import type { LogEvent, VisitHead } from '../engine/log/types.ts';
import type { Project } from '../engine/project/types.ts';
import type { StoredProject } from '../workers/api/storage-api.ts';
import { openStorage, sentenceOf } from '../workers/client/client.ts';
import type { Saver } from './app-store.ts';

/** Where saving stands. */
export type SaveState = 'saved' | 'saving' | 'elsewhere' | 'failed';

/**
 * Saves each command as it happens: the sections that changed go to the storage worker. While one
 * write is under way later ones gather, so that a fast hand never queues up old states.
 */
export class AutoSaver extends EventTarget implements Saver {
  private readonly storage = openStorage();
  private pending: Record<string, unknown> = {};
  private writing = false;
  private writable = true;
  state: SaveState = 'saved';
  /** Why saving failed, in a sentence. */
  reason = '';

  /** What was saved before, if anything. */
  async open(): Promise<StoredProject> {
    const stored = await this.storage.open();
    this.writable = stored.writable;
    if (!stored.writable) this.setState('elsewhere');
    return stored;
  }

  /** Keeps unreadable data out of the way of the next save. */
  setAside(reason: string): Promise<void> {
    return this.storage.setAside(reason);
  }

  save(project: Project, before: Project | null): void {
    if (!this.writable) return;
    for (const [section, value] of Object.entries(project)) {
      if (before?.[section as keyof Project] !== value) this.pending[section] = value;
    }
    // What the project before had and this one lacks, as after an undo, must not come back.
    for (const section of Object.keys(before ?? {})) if (!(section in project)) this.pending[section] = undefined;
    void this.write();
  }

  openPress(): Promise<Record<string, unknown>> {
    return this.storage.openPress();
  }

  async savePress(parts: Record<string, unknown>): Promise<void> {
    if (this.writable) await this.storage.savePress(parts);
  }

  readVisits(): Promise<VisitHead[]> {
    return this.storage.readVisits();
  }

  readEvents(visit: string): Promise<LogEvent[]> {
    return this.storage.readEvents(visit);
  }

  /** Also from a second tab: adding to a log never writes over anything. */
  addEvents(head: VisitHead, events: readonly LogEvent[]): Promise<void> {
    return this.storage.addEvents(head, events);
  }

  private async write(): Promise<void> {
    if (this.writing) return;
    this.writing = true;
    try {
      while (Object.keys(this.pending).length > 0) {
        this.setState('saving');
        const sections = this.pending;
        this.pending = {};
        try {
          await this.storage.save(sections);
        } catch (error) {
          this.pending = { ...sections, ...this.pending };
          throw error;
        }
      }
      this.setState('saved');
    } catch (error) {
      this.reason = sentenceOf(error);
      this.setState('failed');
    } finally {
      this.writing = false;
    }
  }

  private setState(state: SaveState): void {
    if (this.state === state) return;
    this.state = state;
    this.dispatchEvent(new Event('change'));
  }
}
