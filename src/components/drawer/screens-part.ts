import { html } from 'lit';
import type { Screen } from '../../engine/shapes/types.ts';
import type { AppStore } from '../app-store.ts';
import { drawerFilms, drawerPlates } from '../ui/films/drawer-films.ts';
import './screen-rack.ts';

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
      <h2 id="screens-head">Screens</h2>
      <span class="soft">${studio.screens.length}</span>
      <span class="fill"></span>
      ${drawerFilms(store)} ${drawerPlates(store)}
      <button title="All screens on one sheet; many shapes put on screens at once" @click=${compose}>Whole sheet…</button>
      <button class="quiet" title="Name, colour, sheet and printable part of the paper" @click=${() => store.go('inks')}>Sheet ${studio.paper.widthMm} × ${studio.paper.heightMm} mm…</button>
    </header>
    ${
      bare
        ? html`<p class="soft">No screens yet: choose a shape above and make a screen of it.</p>`
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
