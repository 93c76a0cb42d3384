import { html } from 'lit';
import type { Screen } from '../../engine/shapes/types.ts';
import type { AppStore } from '../app-store.ts';
import { drawerFilms, drawerPlates } from '../ui/films/drawer-films.ts';
import './screen-rack.ts';
import { say } from '../words/en/drawer/room.ts';

interface ScreensPart {
  store: AppStore;
  /** The screen that is open beside; none where there is none. */
  open: Screen | undefined;
  choose(screen: string): void;
  /** Opens the whole sheet. */
  compose(): void;
}

/** The screens in their rack, and the ways on to the sheet. */
export function screensPart({ store, open, choose, compose }: ScreensPart) {
  const { drawer: studio, frames } = store.project;
  const bare = studio.screens.length === 0;
  return html`<section aria-labelledby="screens-head">
    <header class="row">
      <h2 id="screens-head">${say.screens2}</h2>
      <span class="soft">${studio.screens.length}</span>
      <span class="fill"></span>
      ${drawerFilms(store)} ${drawerPlates(store)}
      <button title=${say.allScreensOnOne} @click=${compose}>${say.wholeSheet}</button>
      <button class="quiet" title=${say.nameColourSheetAnd} @click=${() => store.go('inks')}>${say.sheetMm(studio.paper.widthMm, studio.paper.heightMm)}</button>
    </header>
    ${
      bare
        ? html`<p class="soft">${say.noScreensYetChoose}</p>`
        : html`<screen-rack
          .screens=${studio.screens}
          .shapes=${studio.shapes}
          .paper=${studio.paper}
          .frames=${frames}
          .chosen=${open?.id ?? null}
          @choose=${(event: CustomEvent<string>) => choose(event.detail)}
        ></screen-rack>`
    }
  </section>`;
}
