import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { type Room, roomEntry } from '../rooms.ts';
import '../ui/cautions.ts';
import { controls } from '../ui/controls-style.ts';
import '../ui/kit/choice.ts';
import { dialogStyle } from '../ui/kit/dialog-style.ts';
import { dialogBox } from '../ui/kit/dialog.ts';
import '../ui/kit/key-list.ts';
import type { CautionTopic } from '../words/cautions.ts';
import { say } from '../words/en/help/room.ts';
import { GLOSSARY, wordsWith } from './glossary.ts';
import { helpStyle } from './help-style.ts';
import { labelled } from './labelled.ts';
import { ROOM_HELP } from './room-help.ts';

/** Pictures of the rooms, made from the app by `npm run pictures`. */
const PICTURES = import.meta.glob<string>('./pictures/*.webp', { eager: true, query: '?url', import: 'default' });

const PARTS = [
  { value: 'room', label: say.thisRoom },
  { value: 'keys', label: say.keys },
  { value: 'words', label: say.words },
] as const;

type Part = (typeof PARTS)[number]['value'];

/** What can hurt in the work that a room is about. */
const DANGERS: Partial<Record<Room, CautionTopic>> = { drawer: 'screens', inks: 'inks', press: 'press', lesson: 'lesson' };

function foundWords(count: number): string {
  if (count === 0) return say.noWordHasThat;
  return say.ofWordsThoseWith(count, GLOSSARY.length);
}

/** Help: the room one stands in, its keys, and all words. */
@customElement('ps-help')
export class Help extends LitElement {
  static override styles = [
    controls,
    dialogStyle,
    helpStyle,
    css`
      :host {
        --dialog-width: 760px;
      }
    `,
  ];

  @property() room: Room = 'wall';
  @state() private shown: Part = 'room';
  @state() private sought = '';
  @query('dialog') private dialog!: HTMLDialogElement;

  async show(): Promise<void> {
    this.shown = 'room';
    await this.updateComplete;
    if (!this.dialog.open) this.dialog.showModal();
  }

  private renderRoom() {
    const { about, picture, howTo } = ROOM_HELP[this.room];
    const danger = DANGERS[this.room];
    const source = PICTURES[`./pictures/${this.room}.webp`];
    return html`<p>${about}</p>
      ${source === undefined ? nothing : html`<img src=${source} alt=${picture} width="1200" height="750" loading="lazy" />`}
      <dl class="how">${howTo.map(([what, how]) => html`<dt>${what}</dt><dd>${labelled(how)}</dd>`)}</dl>
      ${danger === undefined ? nothing : html`<ps-cautions topic=${danger}></ps-cautions>`}`;
  }

  private renderWords() {
    const words = wordsWith(this.sought);
    return html`<label class="stacked"
        >${say.lookForWord}
        <input type="search" .value=${this.sought} @input=${(event: Event) => (this.sought = (event.target as HTMLInputElement).value)} />
      </label>
      <p class="small soft" role="status">${foundWords(words.length)}</p>
      <dl class="words">
        ${words.map(({ word, means, ours }) => html`<dt>${word}${ours === true ? html`<span class="ours" title=${say.wordOfOurs}>·</span>` : nothing}</dt><dd>${means}</dd>`)}
      </dl>`;
  }

  private renderPart() {
    if (this.shown === 'words') return this.renderWords();
    if (this.shown === 'keys') return html`<ps-key-list .keys=${roomEntry(this.room).keys}></ps-key-list>`;
    return this.renderRoom();
  }

  override render() {
    return dialogBox(
      { heading: say.help(roomEntry(this.room).label), closable: true },
      html`<ps-choice
          label=${say.partOfHelp}
          .options=${PARTS}
          .value=${this.shown}
          @pick=${(event: CustomEvent<Part>) => (this.shown = event.detail)}
        ></ps-choice>
        <div class="part" data-part=${this.shown}>${this.renderPart()}</div>`,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-help': Help;
  }
}
