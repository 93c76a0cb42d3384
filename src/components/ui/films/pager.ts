import { html, nothing } from 'lit';
import { say } from '../../words/en/ui/films.ts';

/** Which page of how many is shown. */
interface Pager {
  page: number;
  pages: number;
  words: string;
  /** 'page' or 'sheet'. */
  what: string;
  turn: (page: number) => void;
}

/** Words about a page, between the ways to its neighbours where it has some. */
export function pager({ page, pages, words, what, turn }: Pager) {
  const step = (by: number, name: string, sign: string) =>
    html`<button type="button" aria-label=${name} ?disabled=${page + by < 0 || page + by >= pages} @click=${() => turn(page + by)}>${sign}</button>`;
  return html`<div class="pager">
    ${pages < 2 ? nothing : step(-1, say.theBefore(what), '←')}
    <span class="soft small" role="status">${words}</span>
    ${pages < 2 ? nothing : step(1, say.next(what), '→')}
  </div>`;
}
