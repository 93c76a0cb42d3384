import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { meshChoices } from '../../../engine/ink/film/mesh-choices.ts';
import { type Mesh, sameMesh } from '../../../engine/ink/film/mesh.ts';
import type { Screen } from '../../../engine/shapes/types.ts';
import '../../ui/kit/select.ts';

/** What choosing no mesh gives. */
const NONE = 'none';

/** Chooses a mesh of the screens or of the table. Sends `pick` with a mesh, or with null for none. */
@customElement('mesh-select')
export class MeshSelect extends LitElement {
  static override styles = css`
    :host {
      display: block;
      min-width: 0;
    }
  `;

  @property() label = 'Mesh';
  @property({ attribute: false }) mesh: Mesh | null = null;
  @property({ attribute: false }) screens: readonly Screen[] = [];
  /** What choosing none means; '' when there must be a mesh. */
  @property() none = '';

  override render() {
    const { mesh } = this;
    const choices = meshChoices(this.screens, mesh ?? undefined);
    const all = [...choices.screens, ...choices.table];
    const shown = all.findIndex((choice) => mesh !== null && sameMesh(mesh, choice.mesh));
    const options = (list: typeof all, from: number) => list.map(({ label }, i) => ({ value: String(from + i), label }));
    const groups = [
      { label: 'On your screens', options: options(choices.screens, 0) },
      { label: 'Threads per cm – thread in µm', options: options(choices.table, choices.screens.length) },
    ].filter((group) => group.options.length > 0);
    return html`<ps-select
      label=${this.label}
      .options=${this.none === '' ? groups : [{ value: NONE, label: this.none }, ...groups]}
      .value=${mesh === null ? NONE : String(shown)}
      @pick=${(event: CustomEvent<string>) => this.pick(event.detail === NONE ? null : entryAt(all, Number(event.detail)).mesh)}
    ></ps-select>`;
  }

  private pick(mesh: Mesh | null): void {
    this.dispatchEvent(new CustomEvent<Mesh | null>('pick', { detail: mesh === null ? null : { ...mesh } }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'mesh-select': MeshSelect;
  }
}
