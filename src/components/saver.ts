import type { LogEvent, VisitHead } from '../engine/log/types.ts';
import type { Project } from '../engine/project/types.ts';
import type { KeptHead, KeptKind, StoredProject } from '../workers/api/storage-api.ts';
import { openStorage, sentenceOf } from '../workers/client/client.ts';
import type { Saver } from './app-store.ts';
import { inIt } from './keep/in-it.ts';
import { OtherTabs } from './keep/other-tabs.ts';
import { ProjectLock } from './keep/project-lock.ts';
import { newId } from './ui/new-id.ts';
import { say } from './words/en/app/frame.ts';

/** Why nothing is written: another tab saves, the user is asked which of two goes on, or nothing can be written. */
export type Held = 'elsewhere' | 'asking' | 'memory';

/** Where saving stands. */
export type SaveState = 'saved' | 'saving' | 'late' | 'failed' | Held;

/** The schemas of a log are large, and none is read before the first prints. */
const logReader = () => import('../engine/log/read-events.ts');

/** Saving that takes longer is told, ms. */
const LATE_MS = 3000;
/** What failed is tried again after so long, ms. */
const RETRY_MS = 10_000;

/**
 * Saves each command as it happens: the sections that changed go to the storage worker. While one
 * write is under way later ones gather, so that a fast hand never queues up old states. What could not
 * be written stays pending and is tried again.
 *
 * Events: `change` when the state changes; `handover` when the tab that held the project was closed;
 * `elsewhere` when another tab has saved the project or the pull order; `tell` with a sentence for the user.
 */
export class AutoSaver extends EventTarget implements Saver {
  private readonly storage = openStorage(() => this.tell(say.partOfAppThat));
  private readonly lock = new ProjectLock();
  private readonly tabs = new OtherTabs((what) => this.dispatchEvent(new CustomEvent('elsewhere', { detail: what })));
  private pending: Record<string, unknown> = {};
  private writing = false;
  private held: Held | null = null;
  private editedWhileHeld = false;
  /** The pull order of a tab that may not write, which is in this page alone. */
  private heldPress: Record<string, unknown> | null = null;
  private retry: ReturnType<typeof setTimeout> | undefined;
  state: SaveState = 'saved';
  /** Why saving failed or is held, in a sentence. */
  reason = '';
  /** What this browser had lost of what it kept; its places were made again. */
  lost: readonly string[] = [];

  /** Whether this tab may write. */
  get writable(): boolean {
    return this.held === null;
  }

  /** Whether something was changed here that is not on the disk. */
  get unsaved(): boolean {
    return this.held === null ? this.writing || Object.keys(this.pending).length > 0 : this.editedWhileHeld;
  }

  /** What was saved before, if anything. Until all of it was read or put aside, nothing may be written. */
  async open(): Promise<StoredProject> {
    if (!(await this.lock.take(() => this.dispatchEvent(new Event('handover'))))) this.hold('elsewhere');
    const stored = await this.storage.open();
    this.lost = await this.storage.lost();
    return stored;
  }

  /** What is saved now. */
  readAgain(): Promise<StoredProject> {
    return this.storage.open();
  }

  /** From now on nothing is written. */
  hold(held: Held, reason = ''): void {
    this.held = held;
    this.reason = reason;
    this.setState(held);
  }

  /** From now on what changes is written; what was changed before is not. */
  release(): void {
    this.held = null;
    this.heldPress = null;
    this.editedWhileHeld = false;
    this.reason = '';
    this.setState('saved');
  }

  save(project: Project, before: Project | null): void {
    if (this.held !== null) {
      if (before !== null) this.editedHere();
      return;
    }
    for (const [section, value] of Object.entries(project)) {
      if (before?.[section as keyof Project] !== value) this.pending[section] = value;
    }
    // What the project before had and this one lacks, as after an undo, must not come back.
    for (const section of Object.keys(before ?? {})) if (!(section in project)) this.pending[section] = undefined;
    void this.write();
  }

  private editedHere(): void {
    if (this.editedWhileHeld) return;
    this.editedWhileHeld = true;
    this.dispatchEvent(new Event('change'));
  }

  /** Writes a project in place of all that is saved. */
  async replace(project: Project): Promise<void> {
    await this.storage.replace({ ...project });
    this.tabs.tell('project');
  }

  /**
   * Keeps sections beside the open project; they are on the disk when this resolves.
   * @returns the id under which they are kept
   */
  async keep(kind: KeptKind, sections: Record<string, unknown>, reason: string): Promise<string> {
    const id = newId();
    await this.keepAs({ id, kind, atMs: Date.now(), reason }, sections);
    return id;
  }

  /** Keeps sections in place of what is kept under their id. */
  keepAs(head: Omit<KeptHead, 'title'>, sections: Record<string, unknown>): Promise<void> {
    const title = typeof sections['title'] === 'string' ? sections['title'] : '';
    return this.storage.keep({ ...head, title }, sections);
  }

  shelve(project: Project, more: Record<string, unknown> = {}): Promise<string> {
    return this.keep('project', { ...project, ...more }, inIt(project));
  }

  /** Waits until what was changed is written. @returns whether it is: false where nothing may be written, or writing fails */
  async settled(): Promise<boolean> {
    while (this.writing) await new Promise((resolve) => this.addEventListener('change', resolve, { once: true }));
    return this.held === null && !this.unsaved;
  }

  listKept(): Promise<KeptHead[]> {
    return this.storage.listKept();
  }

  readKept(id: string): Promise<Record<string, unknown> | null> {
    return this.storage.readKept(id);
  }

  dropKept(id: string): Promise<void> {
    return this.storage.dropKept(id);
  }

  async openPress(): Promise<Record<string, unknown>> {
    const stored = this.storage.openPress();
    const held = this.heldPress;
    // What is held here lies over what is stored, part by part; a whole order counts also where nothing can be read.
    return { ...(await (held !== null && 'made' in held ? stored.catch(() => ({})) : stored)), ...held };
  }

  /** Writes the parts of the press that were changed while nothing might be written; what another tab wrote of others stays. */
  async keepHeldPress(): Promise<void> {
    if (this.heldPress !== null) await this.storage.savePress(this.heldPress);
  }

  async savePress(parts: Record<string, unknown>): Promise<void> {
    if (!this.writable) {
      // A visit that is opened here has its order all the same, as its project is shown unsaved too.
      this.heldPress = { ...this.heldPress, ...parts };
      this.editedHere();
      return;
    }
    await this.storage.savePress(parts);
    this.tabs.tell('press');
  }

  /** The visits that read well; of others it is told. */
  async readVisits(): Promise<VisitHead[]> {
    const { readHeads } = await logReader();
    const { read, problems } = readHeads(await this.storage.readVisits(), say.visitsKeptInThis);
    const [first] = problems;
    if (first !== undefined) {
      this.tell(say.ofVisitsKeptIn(problems.length, first.message));
    }
    return read;
  }

  /** The events that read well; of others it is told. */
  async readEvents(visit: string): Promise<LogEvent[]> {
    const raw = await this.storage.readEvents(visit);
    const { readEvents } = await logReader();
    const { read, problems } = readEvents(raw, say.logOfThisVisit);
    const [first] = problems;
    if (first !== undefined) {
      this.tell(say.ofEntriesOfThis(problems.length, raw.length, first.message));
    }
    return read;
  }

  /** Also from a second tab: adding to a log never writes over anything. */
  addEvents(head: VisitHead, events: readonly LogEvent[]): Promise<void> {
    return this.storage.addEvents(head, events);
  }

  private async write(): Promise<void> {
    if (this.writing) return;
    this.writing = true;
    clearTimeout(this.retry);
    try {
      while (Object.keys(this.pending).length > 0) await this.writePending();
      if (this.held === null) this.setState('saved');
    } catch (error) {
      this.reason = sentenceOf(error);
      if (this.held === null) this.setState('failed');
      this.retry = setTimeout(() => void this.write(), RETRY_MS);
    } finally {
      this.writing = false;
    }
  }

  private async writePending(): Promise<void> {
    // A failure stays in view until saving works again.
    if (this.state !== 'failed') this.setState('saving');
    const sections = this.pending;
    this.pending = {};
    const late = setTimeout(() => this.setState('late'), LATE_MS);
    try {
      await this.storage.save(sections);
      this.tabs.tell('project');
    } catch (error) {
      this.pending = { ...sections, ...this.pending };
      throw error;
    } finally {
      clearTimeout(late);
    }
  }

  private tell(sentence: string): void {
    this.dispatchEvent(new CustomEvent('tell', { detail: sentence }));
  }

  private setState(state: SaveState): void {
    if (this.state === state) return;
    this.state = state;
    this.dispatchEvent(new Event('change'));
  }
}
