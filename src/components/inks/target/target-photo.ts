import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { defined, entryAt } from '../../../engine/base/at.ts';
import { roundedLab } from '../../../engine/colour/lab.ts';
import { coloursFromPhoto } from '../../../engine/ink/characterise/drawdown-photo.ts';
import type { Lab, Paper } from '../../../engine/ink/types.ts';
import { controls } from '../../ui/controls-style.ts';
import '../photo/photo-picks.ts';
import { say } from '../../words/en/inks/target.ts';
import type { PhotoPatch, PhotoPicks } from '../photo/photo-picks.ts';
import { photoStyles } from '../photo/photo-style.ts';

const WHITE: PhotoPatch = { key: 'white', name: say.barePaper };
const BLACK: PhotoPatch = { key: 'black', name: say.blackPatch };

/** Picks a target's squares from a photo of it. Sends `squares` with the colours that a pick gave or changed, by number. */
@customElement('target-photo')
export class TargetPhoto extends LitElement {
  static override styles = [controls, photoStyles];

  @property({ attribute: false }) paper!: Paper;
  /** Names by number, in the order of the target. */
  @property({ attribute: false }) squares: readonly { number: number; name: string }[] = [];
  @state() private problems: readonly string[] = [];
  private patches: readonly PhotoPatch[] = [];
  /** As last sent, so that a colour typed over a picked one stays. */
  private sent = new Map<number, string>();

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('squares')) this.patches = [WHITE, BLACK, ...this.squares.map(({ number, name }) => ({ key: `${number}`, name }))];
  }

  private take(picks: PhotoPicks): void {
    const [white, black] = [picks.get(WHITE.key), picks.get(BLACK.key)];
    this.problems = [];
    if (white === undefined || black === undefined) return;
    const chosen = this.squares.filter(({ number }) => picks.has(`${number}`));
    const { labs, problems } = coloursFromPhoto(
      { white, black },
      chosen.map(({ number }) => defined(picks.get(`${number}`))),
      this.paper.reflectance,
    );
    this.problems = problems.map(({ message, where }) => {
      const square = chosen[Number(where)];
      return square === undefined ? message : message.replace('This patch', `Square ${square.name}`);
    });
    if (labs === null) return;
    const detail = new Map<number, Lab>();
    const sent = new Map<number, string>();
    chosen.forEach(({ number }, i) => {
      const lab = roundedLab(entryAt(labs, i));
      sent.set(number, lab.join());
      if (this.sent.get(number) !== lab.join()) detail.set(number, lab);
    });
    this.sent = sent;
    this.dispatchEvent(new CustomEvent<ReadonlyMap<number, Lab>>('squares', { detail }));
  }

  override render() {
    return html`
      <photo-picks
        .patches=${this.patches}
        hint=${say.wholeTargetLitEvenly}
        @picks=${(event: CustomEvent<PhotoPicks>) => this.take(event.detail)}
      ></photo-picks>
      <p class="small soft">${say.firstBarePaperAnd}</p>
      ${this.problems.length === 0 ? nothing : html`<div class="problem small" role="alert">${this.problems.map((message) => html`<p>${message}</p>`)}</div>`}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'target-photo': TargetPhoto;
  }
}
