import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { srgbHexFromLab } from '../../../engine/colour/screen-colour.ts';
import {
  type Alignment,
  alignedIn,
  alignedTogether,
  middleOf,
  fetchedBack,
  mirroredAbout,
  movedBy,
  offSheet,
  type Piece,
  scaledBy,
  turnedBy,
} from '../../../engine/shapes/compose/arrange.ts';
import { DEFAULT_MESH, nextScreenNumber } from '../../../engine/shapes/place/new-screen.ts';
import type { PlacedShape, Screen } from '../../../engine/shapes/types.ts';
import { StoreElement } from '../../store-element.ts';
import { controls } from '../../ui/controls-style.ts';
import { newId } from '../../ui/new-id.ts';
import './compose-sheet.ts';
import { say } from '../../words/en/drawer/compose.ts';
import type { Placing } from './compose-sheet.ts';
import { composeStyle } from './compose-style.ts';
import './put-many.ts';
import { type AlignWith, composeTools, type ComposeDeeds } from './compose-tools.ts';
import { withPieces } from './sheet-hold.ts';

/** How far a duplicate lies from what it is of, mm. */
const BESIDE_MM = 10;

/** More screens than these in their inks hide each other: they are ghosts until one asks. */
const INKED_TO = 16;

/**
 * All screens on the whole sheet, and what is done with the chosen one.
 * @fires choose CustomEvent<string | null>: the id of the chosen screen
 * @fires edit CustomEvent<string>: a screen is to be opened
 */
@customElement('drawer-compose')
export class DrawerCompose extends StoreElement {
  static override styles = [controls, composeStyle];

  /** Id of the chosen screen; null for none. */
  @property({ attribute: false }) screen: string | null = null;
  @state() private pieces: readonly number[] | 'all' = 'all';
  @state() private inked = false;
  @state() private stepMm = 1;
  @state() private alignWith: AlignWith = 'sheet';
  /** Ids of screens that are aligned with the chosen one. */
  @state() private others: readonly string[] = [];
  @state() private tried: readonly (readonly PlacedShape[])[] = [];
  @state() private putting = false;

  override connectedCallback(): void {
    super.connectedCallback();
    this.inked = this.store.project.drawer.screens.length <= INKED_TO;
  }

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('screen') && changed.get('screen') !== undefined && this.screen !== this.pickedOf) this.pieces = 'all';
  }

  /** The screen whose pieces were picked here. */
  private pickedOf: string | null = null;

  private get open(): Screen | undefined {
    return this.store.project.drawer.screens.find(({ id }) => id === this.screen);
  }

  private chosenPieces({ placed }: Screen): readonly number[] {
    const all = placed.map((_, i) => i);
    const left = this.pieces === 'all' ? all : this.pieces.filter((i) => i < placed.length);
    return left.length === 0 ? all : left;
  }

  private choose(screen: string, piece: number): void {
    const { placed = [] } = this.store.project.drawer.screens.find(({ id }) => id === screen) ?? {};
    // On a screen of one shape, the shape is the screen.
    this.pieces = piece < 0 || placed.length < 2 ? 'all' : [piece];
    this.pickedOf = screen;
    this.dispatchEvent(new CustomEvent('choose', { detail: screen }));
  }

  private place(screen: string, { placed, run }: Placing): boolean {
    return this.store.dispatch({ kind: 'place-shapes', screen, placed, ...(run === undefined ? {} : { run }) });
  }

  private piecesOf(placed: readonly PlacedShape[]): Piece[] {
    const { shapes } = this.store.project.drawer;
    return placed.flatMap((one) => {
      const shape = shapes.find(({ id }) => id === one.shape);
      return shape === undefined ? [] : [{ shape, placed: one }];
    });
  }

  /** Changes the chosen pieces as one. @param run where a row of like steps is undone as one */
  private change(by: (held: PlacedShape[], about: { xMm: number; yMm: number }) => readonly PlacedShape[], run?: string): void {
    const { open } = this;
    if (open === undefined) return;
    const pieces = this.chosenPieces(open);
    const about = middleOf(this.piecesOf(open.placed.filter((_, i) => pieces.includes(i))));
    const placed = withPieces(open.placed, pieces, (held) => by(held, about));
    this.place(open.id, { placed, ...(run === undefined ? {} : { run: `${run} ${pieces.join()}` }) });
  }

  private readonly deeds: ComposeDeeds = {
    nudge: (right, down) => this.change((held) => movedBy(held, right * this.stepMm, down * this.stepMm), 'nudge'),
    setStep: (mm) => (this.stepMm = mm),
    turn: (degrees) => this.change((held, about) => turnedBy(held, degrees, about), 'turn'),
    scale: (factor) => this.change((held, about) => scaledBy(held, factor, about), 'scale'),
    mirror: () => this.change((held, { xMm }) => mirroredAbout(held, xMm)),
    align: (to) => this.align(to),
    alignWith: (what) => (this.alignWith = what),
    alignOther: (screen, on) => (this.others = on ? [...this.others, screen] : this.others.filter((id) => id !== screen)),
    duplicate: (on) => this.duplicate(on),
    takeOff: () => this.takeOff(),
    pick: (piece) => {
      this.pieces = this.picked(piece);
      this.pickedOf = this.screen;
    },
    edit: () => this.dispatchEvent(new CustomEvent('edit', { detail: this.screen })),
  };

  /** What is chosen once a piece was pressed: from all it alone, else with it or without it. */
  private picked(piece: number | 'all'): readonly number[] | 'all' {
    if (piece === 'all' || this.pieces === 'all') return piece === 'all' ? 'all' : [piece];
    const left = this.pieces.filter((i) => i !== piece);
    return left.length < this.pieces.length ? left : [...left, piece].toSorted((a, b) => a - b);
  }

  /** What aligning now goes by: without a second shape the sheet alone is left. */
  private alignsWith(screen: Screen): AlignWith {
    const alone = this.chosenPieces(screen).length < 2;
    return alone && this.alignWith === 'each other' ? 'sheet' : this.alignWith;
  }

  private align(to: Alignment): void {
    const { open } = this;
    if (open === undefined) return;
    const { paper, screens } = this.store.project.drawer;
    const way = this.alignsWith(open);
    if (way === 'sheet') return this.change((held) => alignedIn(this.piecesOf(held), paper.printable, to));
    if (way === 'each other')
      return this.change((held) =>
        alignedTogether(
          this.piecesOf(held).map((piece) => [piece]),
          to,
        ).flat(),
      );
    const others = screens.filter(({ id }) => id !== open.id && this.others.includes(id));
    const pieces = this.chosenPieces(open);
    const held = this.piecesOf(open.placed.filter((_, i) => pieces.includes(i)));
    const [own = [], ...rest] = alignedTogether([held, ...others.map(({ placed }) => this.piecesOf(placed))], to);
    this.store.dispatch({
      kind: 'place-screens',
      screens: [
        { screen: open.id, placed: withPieces(open.placed, pieces, () => own) },
        ...others.map(({ id }, i) => ({ screen: id, placed: rest[i] ?? [] })),
      ],
    });
  }

  private duplicate(on: 'this screen' | 'another screen'): void {
    const { open } = this;
    if (open === undefined) return;
    const pieces = this.chosenPieces(open);
    const copies = movedBy(
      open.placed.filter((_, i) => pieces.includes(i)),
      BESIDE_MM,
      BESIDE_MM,
    );
    if (on === 'this screen') {
      const from = open.placed.length;
      if (this.place(open.id, { placed: [...open.placed, ...copies] })) this.pieces = copies.map((_, i) => from + i);
      return;
    }
    const screen = { ...this.blank(nextScreenNumber(this.store.project.drawer.screens), open.name, copies), mesh: { ...open.mesh } };
    if (this.store.dispatch({ kind: 'add-screen', screen })) this.choose(screen.id, -1);
  }

  private takeOff(): void {
    const { open } = this;
    if (open === undefined) return;
    const pieces = this.chosenPieces(open);
    this.place(open.id, { placed: open.placed.filter((_, i) => !pieces.includes(i)) });
    this.pieces = 'all';
  }

  private blank(number: number, name: string, placed: PlacedShape[]): Screen {
    return { id: newId(), number, name, placed, mesh: { ...DEFAULT_MESH } };
  }

  /** Makes screens of what was tried; one undo takes them all back. */
  private keep(tried: PlacedShape[][]): void {
    const first = nextScreenNumber(this.store.project.drawer.screens);
    const screens = tried.flatMap((placed, i) => (placed.length === 0 ? [] : [this.blank(first + i, say.scattered(i + 1), placed)]));
    if (!this.store.dispatch({ kind: 'add-screens', screens })) return;
    this.store.tell(say.screensMadeUndoTakes(screens.length), 'news');
    this.putting = false;
    this.tried = [];
  }

  /** Screens whose shapes lie off the sheet, and the way back for each. */
  private off() {
    const { screens, paper } = this.store.project.drawer;
    const off = screens.flatMap((screen) => {
      const pieces = this.piecesOf(screen.placed);
      const how = offSheet(pieces, paper);
      return how === 'not' ? [] : [{ screen, pieces, how }];
    });
    if (off.length === 0) return nothing;
    const wholly = off.filter(({ how }) => how === 'wholly').length;
    return html`<details ?open=${wholly > 0}>
      <summary>${say.screensReachOffSheet(off.length, wholly === 0 ? '' : say.wholly(wholly))}</summary>
      <div class="row off">
        ${off.map(
          ({ screen, pieces, how }) => html`<button @click=${() => this.place(screen.id, { placed: fetchedBack(pieces, paper.printable) })}>
            ${say.fetchScreenBackWholly(screen.number, how === 'wholly')}
          </button>`,
        )}
      </div>
    </details>`;
  }

  private inkColours(): ReadonlyMap<string, string> {
    // What is tried is to be seen over ghosts.
    if (!this.inked || this.putting) return new Map();
    const { bench, drawer } = this.store.project;
    return new Map(
      bench.toReversed().flatMap((pull) => {
        const ink = drawer.inks.find(({ id }) => id === pull.ink);
        return ink === undefined ? [] : [[pull.screen, srgbHexFromLab(ink.overWhite)] as const];
      }),
    );
  }

  override render() {
    const { drawer: studio } = this.store.project;
    const { open } = this;
    const nameOf = (id: string): string => studio.shapes.find((shape) => shape.id === id)?.name ?? id;
    return html`<compose-sheet
        .paper=${studio.paper}
        .shapes=${studio.shapes}
        .screens=${studio.screens}
        .inks=${this.inkColours()}
        .tried=${this.tried}
        .chosen=${open === undefined || this.putting ? null : { screen: open.id, pieces: this.chosenPieces(open) }}
        @choose=${({ detail }: CustomEvent<{ screen: string; piece: number }>) => this.choose(detail.screen, detail.piece)}
        @place=${(event: CustomEvent<Placing>) => open !== undefined && this.place(open.id, event.detail)}
      ></compose-sheet>
      <div class="tools">
        <div class="row">
          <label><input type="checkbox" role="switch" .checked=${this.inked} @change=${(event: Event) => (this.inked = (event.target as HTMLInputElement).checked)} />${say.inInksOfBench}</label>
          <button aria-pressed=${this.putting} ?disabled=${studio.shapes.length === 0} @click=${() => this.toggle()}>${say.putManyShapesOn}</button>
        </div>
        ${
          this.putting
            ? html`<drawer-put-many
              .drawer=${studio}
              @tried=${(event: CustomEvent<PlacedShape[][]>) => (this.tried = event.detail)}
              @keep=${(event: CustomEvent<PlacedShape[][]>) => this.keep(event.detail)}
              @close=${() => this.toggle()}
            ></drawer-put-many>`
            : open === undefined
              ? html`<p class="soft">${say.chooseScreenOnSheet}</p>`
              : composeTools({
                  screen: open,
                  pieces: this.chosenPieces(open),
                  stepMm: this.stepMm,
                  alignWith: this.alignsWith(open),
                  others: studio.screens.flatMap((screen) =>
                    screen.id === open.id ? [] : [{ screen, on: this.others.includes(screen.id) }],
                  ),
                  nameOf,
                  deeds: this.deeds,
                })
        }
        ${this.off()}
      </div>`;
  }

  private toggle(): void {
    this.putting = !this.putting;
    this.tried = [];
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'drawer-compose': DrawerCompose;
  }
}
