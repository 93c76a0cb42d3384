import { html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { SHIFT_MM } from '../../../engine/base/limits.ts';
import type { ExploreSettings } from '../../../engine/explore/types.ts';
import { WallMore } from './setting-fields.ts';

const DIRECTIONS = [
  ['any', 'any'],
  ['across', 'across only'],
  ['down', 'down only'],
] as const;
const TURNS = [
  ['none', 'none'],
  ['half', 'by 180°'],
  ['any', 'any'],
] as const;

/** How pulls may lie: direction and grid of shifts, turns, echoes, strokes, a veil. */
@customElement('wall-offsets')
export class WallOffsets extends WallMore {
  override render() {
    const { explore } = this.project;
    const { offsetDirection = 'any', offsetSnapMm = 0.1, turns = 'none', echoes = 0, maxStrokes = 1, veil = false } = explore;
    const said = [
      offsetDirection === 'any' ? '' : offsetDirection,
      offsetSnapMm === 0.1 ? '' : `snap ${offsetSnapMm} mm`,
      turns === 'none' ? '' : 'turns',
      echoes === 0 ? '' : 'echoes',
      maxStrokes === 1 ? '' : 'strokes',
      veil ? 'a veil' : '',
    ].filter((text) => text !== '');
    const fields = ['offsetDirection', 'offsetSnapMm', 'turns', 'echoes', 'echoMm', 'maxStrokes', 'veil'];
    return this.fold(
      'How pulls lie',
      said.join(', '),
      fields,
      () => html`
      ${this.choice('Shifts go', offsetDirection, DIRECTIONS, (value) => this.change({ offsetDirection: value as ExploreSettings['offsetDirection'] }), 'offsetDirection')}
      ${this.choice(
        'Shifts snap to',
        String(offsetSnapMm),
        [
          ['0.1', '0.1 mm'],
          ['0.5', '0.5 mm'],
          ['1', '1 mm'],
        ],
        (value) => this.change({ offsetSnapMm: Number(value) }),
        'offsetSnapMm',
      )}
      ${this.choice('Turns', turns, TURNS, (value) => this.change({ turns: value as ExploreSettings['turns'] }), 'turns')}
      ${this.number({ key: 'echoes', label: 'Repeat off-register up to', after: 'pulls', min: 0, max: 200, step: 1, empty: '0', ...(explore.echoMm === undefined ? { also: { echoMm: 2 } } : {}) })}
      ${echoes > 0 ? this.number({ key: 'echoMm', label: 'Off-register up to', after: 'mm', min: SHIFT_MM.least, max: SHIFT_MM.most, step: 0.1, empty: '0' }) : this.wrong('echoMm')}
      ${this.number({ key: 'maxStrokes', label: 'Strokes, 1 to', after: 'a pull', min: 1, max: 20, step: 1, empty: '1' })}
      <label class="tick">
        <input type="checkbox" .checked=${veil} @change=${(event: Event) => this.change({ veil: (event.target as HTMLInputElement).checked })} />
        A veil may go over all, last down
      </label>
      ${this.wrong('veil')}
    `,
      'as they are',
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-offsets': WallOffsets;
  }
}
