import { LitElement } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import type { SeenPrint } from '../../../engine/explore/search/explorer.ts';
import type { TasteChoice } from '../../../engine/explore/taste/choices.ts';
import type { Variant } from '../../../engine/explore/types.ts';
import type { Pin } from '../../../engine/recipe/prints/pinned-prints.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { WallBatch } from '../../../workers/api/wall-api.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import type { Stand } from '../../canvas/camera/steering.ts';
import { dropAside, type PagesAside } from '../../canvas/draw/print-pages.ts';
import { fetchPart } from '../../ui/kit/late.ts';
import { say } from '../../words/en/wall/surface.ts';
import { GuestPrints } from '../hang/guest-prints.ts';
import { BY_NUMBER, type HangChoice, Hanging } from '../hang/hanging.ts';
import type { PrintFacts } from '../print/print-facts.ts';
import { SceneHolder } from './scene-holder.ts';
import type { WallSurface } from './wall-surface.ts';

/** How a wall hung that was put aside. */
interface Stood {
  places: number;
  aspect: number;
  selected: ReadonlySet<number>;
  focused: number;
  stand: Stand | null;
  facts: PrintFacts;
  /** What its prints are drawn from; null until the canvas stands. */
  pages: PagesAside | null;
}

/** The prints that hang, and how: what comes for them, what is selected of them, which is in focus. */
export abstract class HungWall extends LitElement {
  @property({ attribute: false }) variants: readonly Variant[] = [];
  /** What the prints were found from. */
  @property({ attribute: false }) drawer: Studio | null = null;
  @property({ attribute: false }) kept: ReadonlySet<number> = new Set();
  /** Prints that hang first, on whichever wall. */
  @property({ attribute: false }) pins: readonly Pin[] = [];
  /** What the project knows of which prints one chooses. */
  @property({ attribute: false }) taught: readonly TasteChoice[] = [];
  /** What the prints look like that were found. */
  @property({ attribute: false }) looks: readonly SeenPrint[] = [];
  @property({ type: Number }) found = 0;
  /** Said in the middle of an empty wall. */
  @property() note = '';
  /** True while prints arrive: then they hang in the order in which they are found. */
  @property({ type: Boolean }) running = false;
  @property({ attribute: false }) relative = true;
  @state() protected focused = -1;
  @state() protected selected: ReadonlySet<number> = new Set();
  /** What is worked out, in words; '' when nothing is. */
  @state() protected busy = '';
  @query('wall-surface') protected surface!: WallSurface;
  private places = 0;
  private aspect = 1;
  private aside: Stood | null = null;
  /** True while a wall that was put aside is to be hung by what was chosen since. */
  private again = false;
  /** Where one is to stand before the wall once it hangs again. */
  private standing: Stand | null = null;
  /** What is taught now, or while questions are answered, does not move the prints under one's hand. */
  protected quiet: 'no' | 'once' | 'answering' = 'no';
  protected readonly hanging = new Hanging();
  protected readonly holder = new SceneHolder(this);
  protected readonly guests = new GuestPrints(this.hanging, this.holder);

  /** Says why the prints could not be hung as asked. */
  protected abstract trouble(sentence: string): void;

  /** Hangs the prints in another way, or others of them. */
  protected abstract rehangBy(change: Partial<Pick<Hanging, 'choice' | 'ranges'>>): void;

  /** Fetches a part of the wall that stands empty until its code has come. */
  protected fetch(load: () => Promise<unknown>): void {
    fetchPart(load, (sentence) => this.trouble(sentence));
  }

  /** Indices of the prints in the order in which they hang. */
  protected get sequence(): readonly number[] {
    return this.holder.scene?.hanging.sequence ?? [];
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.hanging.stop();
  }

  /** Takes the prints down and makes room for others. */
  begin(places: number, aspect: number): void {
    this.takeDown(places, aspect);
    this.holder.with((scene) => scene.begin(places, aspect));
  }

  private takeDown(places: number, aspect: number): void {
    this.surface.forgetPrints();
    this.places = places;
    this.aspect = aspect;
    this.hanging.clear();
    this.guests.forget();
    this.selected = new Set();
    // Its number means another print from here on.
    this.focused = -1;
  }

  /** Makes room for more prints; those that hang stay. */
  extend(places: number): void {
    this.surface.hangBack();
    this.places = places;
    this.guests.forget();
    this.holder.with((scene) => scene.extend(places));
  }

  /** Notes how the wall hangs, before others take its place. */
  putAside(): void {
    const { places, aspect, selected, focused } = this;
    const own = this.guests.own(this.variants.length);
    const stays = new Set([...selected].filter((index) => index < own));
    const stand = this.holder.scene?.steering.stand ?? null;
    this.guests.forget();
    this.dropAside();
    const facts = this.hanging.putAside();
    const aside: Stood = { places, aspect, selected: stays, focused: focused < own ? focused : -1, stand, facts, pages: null };
    this.holder.with((scene) => {
      aside.pages = scene.drawing.putAside();
    });
    this.aside = aside;
  }

  /** Forgets the wall that was put aside. */
  dropAside(): void {
    const { aside } = this;
    this.aside = null;
    if (aside !== null) this.holder.with(() => aside.pages !== null && dropAside(aside.pages));
  }

  /** Hangs the wall that was put aside as it hung: its prints, what was selected, and where one stood. */
  hangAgain(): void {
    const { aside } = this;
    if (aside === null) return;
    const { places, aspect } = aside;
    this.takeDown(places, aspect);
    this.hanging.facts = aside.facts;
    this.holder.with((scene) => scene.begin(places, aspect, aside.pages ?? undefined));
    this.selected = aside.selected;
    this.focused = aside.focused;
    this.standing = aside.stand;
    this.aside = null;
    this.again = true;
  }

  /** Takes the prints down and leaves the wall bare. */
  clear(): void {
    this.dropAside();
    this.begin(0, 1);
  }

  /** Hangs prints at their numbers. */
  add(batch: WallBatch): void {
    this.hanging.facts.add(batch);
    this.holder.with((scene) => {
      scene.add(batch);
      batch.letGo?.();
    });
  }

  /** Hangs pinned prints of other walls after the wall's own. */
  addPins(batch: WallBatch): void {
    this.guests.add(batch);
  }

  /** Closes up a wall that stayed smaller than asked. */
  settle(places: number): void {
    if (this.focused >= places) this.focused = places - 1;
    this.places = places;
    this.holder.with((scene) => scene.lay(places));
  }

  protected override willUpdate(): void {
    this.hanging.taste.taught = this.taught;
  }

  protected override updated(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('kept')) this.holder.with((scene) => scene.setKept(this.kept));
    if (changed.has('selected')) this.holder.with((scene) => scene.setSelected(this.selected));
    if (changed.has('running') && !this.running && this.found > 0) {
      if (!this.hanging.plain) void this.rehang();
    }
    if (changed.has('taught')) this.taughtChanged();
    if (!this.running && this.found > 0 && (changed.has('selected') || changed.has('running'))) this.keepMarks();
    if (this.running || !['running', 'pins', 'variants'].some((name) => changed.has(name))) return;
    // Pinned prints hang first.
    const pinned = this.guests.follow(this.pins, this.variants);
    if (pinned || this.again) void this.rehang();
    this.again = false;
  }

  /** Keeps what is selected for a reload of the page, and brings back what was. */
  private keepMarks(): void {
    import('../print/kept-marks.ts').then(
      ({ keptMarks }) => (this.selected = keptMarks.keep(this.selected, this.hanging.facts.keys)),
      () => {},
    );
  }

  /** Hangs the prints as they hung before the page was loaded, unless that was chosen anew meanwhile. */
  protected async hangAsBefore(): Promise<void> {
    const { keptChoice } = await import('../hang/kept-choice.ts');
    const choice = keptChoice();
    if (choice !== null && this.hanging.choice === BY_NUMBER) this.rehangBy({ choice });
  }

  /** Hangs the prints as it was chosen, and keeps that for a reload of the page. */
  protected hangBy(choice: HangChoice): void {
    this.rehangBy({ choice });
    this.fetch(async () => (await import('../hang/kept-choice.ts')).keepChoice(choice));
  }

  private taughtChanged(): void {
    const { quiet } = this;
    if (quiet === 'once') this.quiet = 'no';
    if (quiet === 'no' && this.hanging.choice.way === 'taste') void this.rehang();
  }

  /** Hangs the prints as they are now to hang. */
  protected async rehang(): Promise<void> {
    this.surface.hangBack();
    this.requestUpdate();
    if (this.running || this.found === 0 || this.drawer === null) return;
    try {
      const spec = await this.hanging.spec(this.variants, this.drawer, (share) => {
        this.busy = say.seeingWhatLooksAlike(Math.round(share * 100));
      });
      if (spec === null) return;
      this.holder.with((scene) => scene.arrange(spec));
      this.standAgain();
      this.requestUpdate();
    } catch (error) {
      this.trouble(sentenceOf(error));
    }
    this.busy = '';
  }

  private standAgain(): void {
    const { standing } = this;
    this.standing = null;
    if (standing !== null) this.holder.with((scene) => scene.steering.standAt(standing));
  }
}
