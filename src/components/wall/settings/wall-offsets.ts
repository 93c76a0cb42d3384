import { html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { SETTINGS } from '../../../engine/explore/settings/setting-table.ts';
import type { ExploreSettings } from '../../../engine/explore/types.ts';
import { say } from '../../words/en/wall/settings.ts';
import { WallMore } from './setting-fields.ts';

/** How pulls are offset and laid down: direction and grid of offsets, repeats a little off, strokes, a veil. */
@customElement('wall-offsets')
export class WallOffsets extends WallMore {
  override render() {
    const { explore } = this.project;
    const { offsetDirection = 'any', offsetSnapMm = 0.1, echoes = 0, maxStrokes = 1, veil = false } = explore;
    const said = [
      offsetDirection === 'any' ? '' : say[offsetDirection],
      offsetSnapMm === 0.1 ? '' : say.stepsOfMm(offsetSnapMm),
      echoes === 0 ? '' : say.repeats,
      say.strokes(maxStrokes),
      veil ? say.aVeil : '',
    ].filter((text) => text !== '');
    const fields = ['offsetDirection', 'offsetSnapMm', 'echoes', 'echoMm', 'maxStrokes', 'veil'];
    return this.fold(
      { title: say.offsetsStrokesVeil, set: said.join(', '), fields, unset: say.asTheyAre },
      () => html`
      ${this.choice('offsetDirection', offsetDirection, (value) => this.change({ offsetDirection: value as ExploreSettings['offsetDirection'] }))}
      ${this.choice('offsetSnapMm', String(offsetSnapMm), (value) => this.change({ offsetSnapMm: Number(value) }))}
      ${this.number('echoes', explore.echoMm === undefined ? { also: { echoMm: 2 } } : {})}
      ${echoes > 0 ? this.number('echoMm') : this.wrong('echoMm')}
      ${this.number('maxStrokes')}
      <label class="tick">
        <input type="checkbox" .checked=${veil} @change=${(event: Event) => this.change({ veil: (event.target as HTMLInputElement).checked })} />
        ${SETTINGS.veil.label}
      </label>
      <p class="soft small">${say.veilIsOneMore}</p>
      ${this.wrong('veil')}
    `,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-offsets': WallOffsets;
  }
}
