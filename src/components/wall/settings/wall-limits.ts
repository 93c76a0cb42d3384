import { html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { LIMIT_FIELDS, LIMITS, limitText } from '../../../engine/explore/settings/limits.ts';
import { SETTINGS } from '../../../engine/explore/settings/setting-table.ts';
import { say } from '../../words/en/wall/settings.ts';
import { WallMore } from './setting-fields.ts';

const FIELDS = LIMIT_FIELDS.filter((field) => LIMITS[field].fold === 'print');

/** What no print may go beyond. */
@customElement('wall-limits')
export class WallLimits extends WallMore {
  override render() {
    const { explore } = this.project;
    const said = FIELDS.flatMap((field) => {
      const value = explore[field];
      return value === undefined ? [] : [LIMITS[field].brief(limitText(field, value))];
    });
    return this.fold(
      { title: say.atMost, set: said.join(', '), fields: FIELDS },
      () => html`
      ${FIELDS.map((field) => this.number(field))}
      ${FIELDS.flatMap((field) => SETTINGS[field].help ?? []).map((help) => html`<p class="soft small">${help}</p>`)}
    `,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-limits': WallLimits;
  }
}
