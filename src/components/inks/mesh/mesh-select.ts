import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { meshChoices } from '../../../engine/ink/film/mesh-choices.ts';
import { type Mesh, sameMesh } from '../../../engine/ink/film/mesh.ts';
import type { Screen } from '../../../engine/shapes/types.ts';
import { controls } from '../../ui/controls-style.ts';
import { fieldStyle } from '../../ui/kit/field-style.ts';
import { say } from '../../words/en/inks/mesh.ts';

/** Chooses a mesh of the screens or of the table. Sends `pick` with a mesh, or with null for none. */
@customElement('mesh-select')
export class MeshSelect extends LitElement {
  static override styles = [controls, fieldStyle];

  @property() label = say.mesh;
  @property({ attribute: false }) mesh: Mesh | null = null;
  @property({ attribute: false }) screens: readonly Screen[] = [];
  /** What choosing none means; '' when there must be a mesh. */
  @property() none = '';

  override render() {
    const { mesh } = this;
    const choices = meshChoices(this.screens, mesh ?? undefined);
    const all = [...choices.screens, ...choices.table];
    const options = (list: typeof all, from: number) =>
      list.map(
        (choice, i) => html`<option value=${from + i} .selected=${mesh !== null && sameMesh(mesh, choice.mesh)}>${choice.label}</option>`,
      );
    return html`<label>
      <span class="label">${this.label}</span>
      <select
        aria-label=${this.label}
        @change=${(event: Event) => {
          const at = Number((event.target as HTMLSelectElement).value);
          this.dispatchEvent(new CustomEvent<Mesh | null>('pick', { detail: at < 0 ? null : { ...entryAt(all, at).mesh } }));
        }}
      >
        ${this.none === '' ? nothing : html`<option value="-1" .selected=${mesh === null}>${this.none}</option>`}
        ${choices.screens.length === 0 ? nothing : html`<optgroup label=${say.onYourScreens}>${options(choices.screens, 0)}</optgroup>`}
        <optgroup label=${say.threadsPerCmThread}>${options(choices.table, choices.screens.length)}</optgroup>
      </select>
    </label>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'mesh-select': MeshSelect;
  }
}
