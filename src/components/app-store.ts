import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Problem } from '../engine/base/error.ts';
import type { SeenRun } from '../engine/explore/search/seen.ts';
import type { LogEvent, VisitHead } from '../engine/log/types.ts';
import type { Command } from '../engine/project/commands/command.ts';
import { endStep, type History, perform, redo, startHistory, undo } from '../engine/project/history.ts';
import type { Project } from '../engine/project/types.ts';
import { sentenceOf } from '../workers/client/client.ts';
import { type Act, Acts } from './acts.ts';
import { FIRST_ROOM, type Room } from './rooms.ts';

/** What there can be trouble with that ends by itself; the same in every language. */
export type Topic =
  | 'dropped files'
  | 'going on'
  | 'lesson'
  | 'pictures of the stack'
  | 'pull order'
  | 'refused change'
  | 'settings of the wall'
  | 'wall';

/** A sentence shown to the user until it is closed. */
export interface Notice {
  id: number;
  kind: 'problem' | 'news';
  text: string;
  /** What can be done about it at once. */
  action?: { label: string; act(): void };
  /** What it is about: it leaves when there is no trouble with that any more. */
  topic?: Topic;
  /** Of a refusal: from when on it leaves with the next change of the project, ms; some time later it leaves by itself. */
  untilMs?: number;
}

/** What a change of the project was refused for is of no account once another is carried out. */
const REFUSED = 'refused change';
/** What could not be done is read, and of no account once someone goes on, after so long, ms. */
const READ_AFTER_MS = 8000;

/** What saves; the store does not know how. */
export interface Saver {
  save(project: Project, before: Project | null): void;
  /** Puts a project, with further sections, into the list of projects; resolves to its id there. */
  shelve?(project: Project, more?: Record<string, unknown>): Promise<string>;
  /** The pull order that the press works from, by parts; not of the project, and never undone. */
  openPress?(): Promise<Record<string, unknown>>;
  savePress?(parts: Record<string, unknown>): Promise<void>;
  /** What was done at the press: only ever added to, and kept when the project changes. */
  readVisits?(): Promise<VisitHead[]>;
  readEvents?(visit: string): Promise<LogEvent[]>;
  /** Resolves when the events are on the disk. */
  addEvents?(head: VisitHead, events: readonly LogEvent[]): Promise<void>;
}

/** A step of undo ends when nothing was changed for so long, ms. */
const STEP_ENDS_AFTER_MS = 1000;

/**
 * The one place that holds the project and what is selected. Commands go in, `change` events come
 * out; selection and room are not undone. `press-saved` says that another tab kept a pull order,
 * `took-over` that this tab goes on with what is here in the place of another's.
 */
export class AppStore extends EventTarget {
  private history: History;
  private nextNotice = 1;
  /** When the last command came, ms; the engine has no clock and is told when a step ends. */
  private lastCommandMs = 0;
  /** How many projects were opened in the place of another; what was found in one is not of the next. */
  opened = 0;
  /** Whether the project that is open came with its pull order, which is saved already. */
  cameWithOrder = false;
  room: Room = FIRST_ROOM;
  /** The pull chosen on the Bench, by id. */
  selectedPull: string | null = null;
  /** Pictures are shown with the paper as white. */
  relative = true;
  /** Pictures and charts hatch what the screen cannot show. */
  marked = false;
  notices: readonly Notice[] = [];
  readonly saver: Saver;
  /** What was done beside the project, such as a tick at the press. */
  private readonly acts = new Acts();

  constructor(project: Project, saver: Saver) {
    super();
    this.history = startHistory(project);
    this.saver = saver;
  }

  get project(): Project {
    return this.history.project;
  }

  get undoLabel(): string | null {
    return this.actLabel ?? this.history.past.at(-1)?.label ?? null;
  }

  /** What is taken back next where it is nothing of the project, as at the press. */
  get actLabel(): string | null {
    return this.acts.last(this.lastStep)?.label ?? null;
  }

  /** The project's last step, the same object however often it was undone and redone. */
  private get lastStep(): unknown {
    return this.history.past.at(-1)?.patches ?? null;
  }

  get redoLabel(): string | null {
    return this.acts.next(this.lastStep)?.label ?? this.history.future[0]?.label ?? null;
  }

  /** Carries out a command; what cannot be carried out becomes a notice and changes nothing. */
  dispatch(command: Command): boolean {
    try {
      const now = performance.now();
      const rested = now - this.lastCommandMs >= STEP_ENDS_AFTER_MS;
      const before = this.history;
      this.adopt(perform(rested ? endStep(before) : before, command));
      if (this.project !== before.project) this.acts.goOn();
      this.lastCommandMs = now;
      return true;
    } catch (error) {
      this.refuse(sentenceOf(error), REFUSED);
      return false;
    }
  }

  undo(): void {
    if (this.acts.undo(this.lastStep)) this.changed();
    else this.adopt(undo(this.history));
  }

  redo(): void {
    if (this.acts.redo(this.lastStep)) this.changed();
    else this.adopt(redo(this.history));
  }

  /** Says that something beside the project was done last; the next undo takes it back. */
  did(act: Act): void {
    this.history = endStep(this.history);
    this.acts.add(act, this.lastStep);
    this.changed();
  }

  /**
   * Opens another project; its history starts anew.
   * @param withOrder whether its pull order was saved before, to be taken up
   */
  open(project: Project, withOrder = false): void {
    this.cameWithOrder = withOrder;
    const before = this.project;
    this.history = startHistory(project);
    this.acts.clear();
    this.opened++;
    this.selectedPull = null;
    this.notices = this.notices.filter(({ kind }) => kind === 'news');
    this.saver.save(project, before);
    this.changed();
  }

  /** Shows this project as another tab saved it; nothing is written, and its history starts anew. */
  reopen(project: Project): void {
    this.history = startHistory(project);
    this.acts.clear();
    if (!project.bench.some((pull) => pull.id === this.selectedPull)) this.selectedPull = null;
    this.changed();
  }

  /** What this project's walls have shown; saved with it, and never undone. */
  setSeen(seen: readonly SeenRun[]): void {
    const before = this.project;
    if (seen === before.seen || (seen.length === 0 && before.seen === undefined)) return;
    this.history = { ...this.history, project: { ...before, seen } };
    this.saver.save(this.project, before);
    this.changed();
  }

  /** What counts as the same, ΔE00, where it follows from inks and stack; saved with the project, no step of undo. */
  setSame(minDeltaE: number): void {
    const before = this.project;
    if (minDeltaE === before.explore.minDeltaE) return;
    this.history = { ...this.history, project: { ...before, explore: { ...before.explore, minDeltaE } } };
    this.saver.save(this.project, before);
    this.changed();
  }

  go(room: Room): void {
    if (this.room === room) return;
    this.room = room;
    this.changed();
  }

  select(pull: string | null): void {
    if (this.selectedPull === pull) return;
    this.selectedPull = pull;
    this.changed();
  }

  setRelative(relative: boolean): void {
    this.relative = relative;
    this.changed();
  }

  setMarked(marked: boolean): void {
    this.marked = marked;
    this.changed();
  }

  tell(text: string, kind: Notice['kind'] = 'problem', action?: Notice['action']): void {
    const others = this.notices.filter((notice) => notice.text !== text);
    // What is told already stays where it is, unless there is something new to do about it.
    if (others.length < this.notices.length && action === undefined) return;
    this.notices = [...others.slice(-4), { id: this.nextNotice++, kind, text, ...(action === undefined ? {} : { action }) }];
    this.changed();
  }

  /** Tells why what someone tried could not be done, as a file that is none; leaves with a change a while after, or by itself. */
  refuse(text: string, topic?: Topic): void {
    if (topic === undefined) this.tell(text);
    else this.trouble(topic, text);
    const untilMs = performance.now() + READ_AFTER_MS;
    this.notices = this.notices.map((notice) => (notice.text === text ? { ...notice, untilMs } : notice));
  }

  /** Tells of trouble with something; what was told of it before leaves. */
  trouble(topic: Topic, text: string, action?: Notice['action']): void {
    const before = this.notices.find((notice) => notice.topic === topic);
    if (before?.text === text && action === undefined) return;
    const others = this.notices.filter((notice) => notice !== before && notice.text !== text);
    this.notices = [
      ...others.slice(-4),
      { id: this.nextNotice++, kind: 'problem', text, topic, ...(action === undefined ? {} : { action }) },
    ];
    this.changed();
  }

  /** There is no trouble with something any more: what was told of it leaves. */
  settled(topic: Topic): void {
    if (!this.notices.some((notice) => notice.topic === topic)) return;
    this.notices = this.notices.filter((notice) => notice.topic !== topic);
    this.changed();
  }

  /** Refuses a file for the first of its problems. */
  refuseFile([problem]: readonly Problem[]): void {
    if (problem !== undefined) this.refuse(problem.message);
  }

  closeNotice(id: number): void {
    this.notices = this.notices.filter((notice) => notice.id !== id);
    this.changed();
  }

  private adopt(history: History): void {
    if (history === this.history) return;
    const before = this.project;
    this.history = history;
    const now = performance.now();
    this.notices = this.notices.filter(({ topic, untilMs = Infinity }) => topic !== REFUSED && untilMs > now);
    if (this.selectedPull !== null && !history.project.bench.some((pull) => pull.id === this.selectedPull)) {
      this.selectedPull = null;
    }
    this.saver.save(history.project, before);
    this.changed();
  }

  private changed(): void {
    this.dispatchEvent(new Event('change'));
  }
}

/** Redraws a component whenever the store changes. */
export class StoreController implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private readonly store: AppStore;
  private readonly onChange = (): void => this.host.requestUpdate();

  constructor(host: ReactiveControllerHost, store: AppStore) {
    this.host = host;
    this.store = store;
    host.addController(this);
  }

  hostConnected(): void {
    this.store.addEventListener('change', this.onChange);
  }

  hostDisconnected(): void {
    this.store.removeEventListener('change', this.onChange);
  }
}
