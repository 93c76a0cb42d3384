import { html, nothing } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { entryAt } from '../../engine/base/at.ts';
import { nextScreenNumber, screenOfShape } from '../../engine/shapes/place/new-screen.ts';
import type { ShapeOf } from '../../engine/shapes/read/parts.ts';
import type { WhiteAs } from '../../engine/shapes/read/white.ts';
import type { Screen, Shape } from '../../engine/shapes/types.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import { RoomElement } from '../store-element.ts';
import '../ui/cautions.ts';
import { controls } from '../ui/controls-style.ts';
import '../ui/films/films-dialog.ts';
import { chooseFiles } from '../ui/download.ts';
import { FileDrop, fileDropStyles } from '../ui/files/file-drop.ts';
import { newId } from '../ui/new-id.ts';
import { putOnBench } from '../ui/put-on-bench.ts';
import { sideRoomStyles, WideScreen } from '../ui/side-room.ts';
import { say } from '../words/en/drawer/room.ts';
import './compose/drawer-compose.ts';
import { chosenShape } from './chosen-shape.ts';
import { exchange, type Told, turnedBack } from './divide.ts';
import { drawButton, shapeDialogs } from './draw/shape-dialogs.ts';
import { drawerStyles } from './drawer-style.ts';
import { headOf, laidAgain, type Report, screensFor, spreadAsLaid } from './files-report.ts';
import './screen-editor.ts';
import { droppedFiles, type FilesRead, readOtherwise, readShapeFiles } from './read-files.ts';
import './shape-tray.ts';
import { screensPart } from './screens-part.ts';
import { renderTold } from './told.ts';
import type { TraceDialog } from './trace/trace-dialog.ts';
import { isPicture, PICTURE_FILES } from './trace/traced-files.ts';
import { outlineKey } from './white-areas.ts';

/** The flat file: shapes above, the screens made of them below, one screen open beside. */
@customElement('drawer-room')
export class DrawerRoom extends RoomElement {
  static override styles = [controls, sideRoomStyles, drawerStyles, fileDropStyles];

  protected readonly room = 'drawer';
  @state() private shape: string | null = null;
  @state() private screen: string | null = null;
  @state() private trueSize = true;
  /** Whether the whole sheet is open in the place of the lists. */
  @state() private composing = false;
  @state() private reading = '';
  @state() private report: Report | null = null;
  /** What the report is of. */
  private files: FilesRead | null = null;
  /** What else was made of the same files: an undo or redo brings it back. */
  private others: readonly Told[] = [];
  /** What white in its files was taken for, by `outlineKey`. */
  private whites: ReadonlyMap<string, WhiteAs> = new Map();
  @query('drawer-trace') private tracer!: TraceDialog;
  private readonly wide = new WideScreen(this);
  private listTop = 0;
  /** Which of the projects opened so far the state above is of. */
  private opened = 0;
  private work: Promise<void> = Promise.resolve();
  private stopping: AbortController | null = null;
  private readonly fileDrop = new FileDrop(this, (dropped) => this.drop(dropped));

  protected override willUpdate(): void {
    const back = turnedBack({ files: this.files, report: this.report }, this.others, this.store.project.drawer);
    if (back !== null) [this.files, this.report, this.others] = [back.files, back.report, back.others];
    if (this.opened === this.store.opened) return;
    this.others = [];
    this.opened = this.store.opened;
    this.report = null;
    this.shape = null;
    this.screen = null;
    this.composing = false;
  }

  private drop(dropped: DataTransfer): void {
    void droppedFiles(dropped).then(
      (files) => {
        if (files.length === 0) this.store.trouble('dropped files', say.thereIsNoSVG);
        else this.store.settled('dropped files');
        this.take(files);
      },
      (error: unknown) => this.store.trouble('dropped files', say.whatWasDroppedCould(sentenceOf(error))),
    );
  }

  private async chooseFiles(kinds = '.svg,image/svg+xml'): Promise<void> {
    this.take(await chooseFiles(kinds, true));
  }

  /** Files wait for those before them, so that numbers are given in turn. */
  private take(files: readonly File[]): void {
    const [pictures, drawings] = [files.filter(isPicture), files.filter((file) => !isPicture(file))];
    if (pictures.length > 0) void this.tracer.take(pictures);
    if (drawings.length > 0) this.work = this.work.then(() => this.read(drawings));
  }

  private async read(files: readonly File[]): Promise<void> {
    this.stopping = new AbortController();
    const read = await readShapeFiles(files, this.stopping.signal, (done) => {
      this.reading = files.length === 1 ? say.reading(entryAt(files, 0).name) : say.readingOf(done + 1, files.length);
    });
    this.reading = '';
    this.put(read, files.length);
  }

  /** Puts what so many files came to into the drawer. */
  private put(read: FilesRead, files: number): void {
    const { screens, ...said } = screensFor(read, this.store.project.drawer);
    this.files = read;
    this.others = [];
    this.whites = new Map();
    const added = read.shapes.length > 0 && this.store.dispatch({ kind: 'add-shapes', shapes: read.shapes, screens });
    if (added) {
      this.shape = entryAt(read.shapes, 0).id;
      if (this.wide.matches) this.screen = entryAt(screens, 0).id;
    }
    this.report = {
      ...said,
      head: headOf(added ? read.shapes : [], files - read.shapes.length, screens),
      remarks: [...read.remarks, ...said.remarks],
      refused: files - read.shapes.length,
      screens: added ? screens.map((screen) => screen.id) : [],
    };
  }

  /** Lays the shapes of the last files that give no size so large; one undo takes it back. */
  private resize(longestMm: number): void {
    const { files, report } = this;
    if (files === null || report === null) return;
    const next = laidAgain(files, report, this.store.project.drawer, longestMm);
    if (next.places.length > 0 && this.store.dispatch({ kind: 'lay-out', places: next.places })) this.report = next.report;
  }

  /** Reads a file of the last ones again with its white taken otherwise; one undo takes it back. */
  private async redraw(at: number, white: WhiteAs): Promise<void> {
    const { files, report } = this;
    const file = files?.whites.find((one) => one.at === at)?.file;
    if (files === null || report === null || file === undefined) return;
    const next = await readOtherwise(files, { at, file, white });
    if (typeof next === 'string') return this.store.refuse(next);
    if (this.files !== files || !this.store.project.drawer.shapes.some(({ id }) => id === next.shape.id)) return;
    const { places, report: said } = laidAgain(next.files, report, this.store.project.drawer, report.longestMm);
    if (!this.store.dispatch({ kind: 'redraw-shape', shape: next.shape, places })) return;
    this.files = next.files;
    this.whites = new Map([...this.whites, [outlineKey(next.shape), white]]);
    this.report = said;
  }

  /** Takes one of the last files as other shapes; one undo takes it back. */
  private divide(at: number, each: ShapeOf): void {
    const { files, report } = this;
    if (files === null || report === null) return;
    const next = exchange({ files, report }, { at, each }, this.store.project.drawer);
    if (!this.store.dispatch(next.command)) return this.requestUpdate();
    this.others = [...this.others, { files, report }];
    [this.files, this.report] = [next.files, next.report];
    this.shape = next.command.shapes[0]?.id ?? null;
    this.screen = this.wide.matches ? (next.command.screens[0]?.id ?? null) : null;
  }

  /** One undo takes all of it back. */
  private spread(screens: readonly Screen[]): void {
    const { drawer: studio } = this.store.project;
    const laid = screens.map(({ id, placed: [first] }) => ({
      id,
      scale: first?.scale ?? 1,
      shape: studio.shapes.find((shape) => shape.id === first?.shape),
    }));
    const places = spreadAsLaid(laid, studio.paper.printable);
    if (places !== null) this.store.dispatch({ kind: 'lay-out', places });
  }

  private newScreen(shape: Shape): void {
    const { drawer: studio } = this.store.project;
    const { screen } = screenOfShape(shape, studio.paper.printable, { id: newId(), number: nextScreenNumber(studio.screens) });
    if (this.store.dispatch({ kind: 'add-screen', screen })) this.choose(screen.id);
  }

  /** On a phone the open screen takes the place of the lists, which are found again as they were left. */
  private choose(id: string | null): void {
    if (!this.wide.matches) {
      if (id !== null && this.screen === null) this.listTop = this.scrollTop;
      void this.updateComplete.then(() => (this.scrollTop = id === null ? this.listTop : 0));
    }
    this.screen = id;
  }

  private openScreen(): Screen | undefined {
    const { screens } = this.store.project.drawer;
    const open = screens.find((screen) => screen.id === this.screen);
    if (open !== undefined || !this.wide.matches) return open;
    return screens.reduce<Screen | undefined>(
      (first, screen) => (first === undefined || screen.number < first.number ? screen : first),
      undefined,
    );
  }

  override render() {
    const { drawer: studio } = this.store.project;
    if (this.composing) return this.renderCompose();
    const open = this.openScreen();
    return html`
      <div class="room ${open === undefined ? '' : 'open'}">
        <div class="left">
          ${this.renderShapes()}
          ${studio.screens.length === 0 && studio.shapes.length === 0 ? nothing : screensPart({ store: this.store, open, choose: (id) => this.choose(id), compose: () => (this.composing = true) })}
          <ps-cautions topic="screens"></ps-cautions>
        </div>
        ${
          open === undefined
            ? nothing
            : html`<aside class="side" aria-label=${say.screen(open.number)}>
              <button class="quiet back" @click=${() => this.choose(null)}>${say.allScreens}</button>
              <screen-editor .store=${this.store} .screen=${open}></screen-editor>
            </aside>`
        }
      </div>
      ${shapeDialogs(this.store, (read) => this.put(read, Math.max(1, read.shapes.length)))}
      ${this.fileDrop.veil(say.dropSVGFilesOr)}
    `;
  }

  private renderCompose() {
    return html`<div class="compose">
      <p class="row"><button class="quiet" @click=${() => (this.composing = false)}>${say.shapesAndScreens}</button></p>
      <drawer-compose
        .store=${this.store}
        .screen=${this.screen}
        @choose=${(event: CustomEvent<string>) => (this.screen = event.detail)}
        @edit=${() => (this.composing = false)}
      ></drawer-compose>
    </div>`;
  }

  private renderShapes() {
    const { drawer: studio } = this.store.project;
    return html`<section aria-labelledby="shapes-head">
      <header class="row">
        <h2 id="shapes-head">${say.shapes}</h2>
        <span class="soft">${studio.shapes.length}</span>
        <span class="fill"></span>
        ${studio.shapes.length < 2 ? nothing : this.renderSizes()}
        <button class=${studio.shapes.length === 0 ? 'main' : ''} ?disabled=${this.reading !== ''} @click=${() => void this.chooseFiles()}>${say.chooseSVGFiles}</button>
        <button class="quiet" @click=${() => void this.chooseFiles(PICTURE_FILES)}>${say.tracePicture}</button>
        ${drawButton(this.store)}
      </header>
      <p class="soft reading" role="status">${this.reading}</p>
      ${this.reading === '' ? nothing : html`<button @click=${() => this.stopping?.abort()}>${say.stop}</button>`}
      ${
        studio.shapes.length === 0
          ? html`<div class="empty">
            <p>${say.drawerIsEmpty}</p>
            <p class="soft">${say.dropSVGFilesOrFolder}</p>
          </div>`
          : html`<div class="tray">
            <shape-tray .shapes=${studio.shapes} .chosen=${this.shape} .trueSize=${this.trueSize} @choose=${(event: CustomEvent<string>) => (this.shape = event.detail)}></shape-tray>
          </div>`
      }
      ${this.renderChosen()} ${this.renderReport()}
    </section>`;
  }

  private renderSizes() {
    const option = (label: string, value: boolean) =>
      html`<label><input type="radio" name="sizes" .checked=${this.trueSize === value} @change=${() => (this.trueSize = value)} />${label}</label>`;
    return html`<span class="row small sizes" role="radiogroup" aria-label=${say.sizesShown}>${option(say.trueToEachOther, true)}${option(say.eachAsLargeAs, false)}</span>`;
  }

  private renderChosen() {
    const { drawer: studio } = this.store.project;
    const shape = studio.shapes.find((entry) => entry.id === this.shape);
    if (shape === undefined) return nothing;
    return chosenShape(shape, studio, {
      newScreen: () => this.newScreen(shape),
      remove: () => this.store.dispatch({ kind: 'remove-shape', shape: shape.id }),
    });
  }

  private renderReport() {
    const { report, files } = this;
    if (report === null || files === null) return nothing;
    return renderTold(
      { report, files, whites: this.whites, project: this.store.project },
      {
        close: () => (this.report = null),
        toBench: (screens) => putOnBench(this.store, screens),
        spread: (screens) => this.spread(screens),
        resize: (mm) => this.resize(mm),
        redraw: (at, white) => void this.redraw(at, white),
        divide: (at, each) => this.divide(at, each),
      },
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'drawer-room': DrawerRoom;
  }
}
