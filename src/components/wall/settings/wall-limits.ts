import { html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { WallMore } from './setting-fields.ts';

/** What no print may go beyond. */
@customElement('wall-limits')
export class WallLimits extends WallMore {
  override render() {
    const { maxPulls, maxScreens, maxSetUps, maxThirdShare, maxEdgeShare } = this.project.explore;
    const percent = (share: number): string => `${Math.round(share * 1000) / 10} %`;
    const said = [
      maxPulls === undefined ? '' : `${maxPulls} pulls`,
      maxScreens === undefined ? '' : `${maxScreens} screens`,
      maxSetUps === undefined ? '' : `${maxSetUps} set-ups`,
      maxThirdShare === undefined ? '' : `third colours ${percent(maxThirdShare)}`,
      maxEdgeShare === undefined ? '' : `edge ${percent(maxEdgeShare)}`,
    ].filter((text) => text !== '');
    return this.fold(
      'At most',
      said.join(', '),
      ['maxPulls', 'maxScreens', 'maxSetUps', 'maxThirdShare', 'maxEdgeShare'],
      () => html`
      ${this.number({ key: 'maxPulls', label: 'Pulls', after: 'a print', min: 1, max: 200, step: 1, empty: 'any' })}
      ${this.number({ key: 'maxScreens', label: 'Screens', after: 'a print', min: 1, max: 200, step: 1, empty: 'any' })}
      ${this.number({ key: 'maxSetUps', label: 'Set-ups', after: 'a print', min: 1, max: 200, step: 1, empty: 'any' })}
      ${this.number({ key: 'maxThirdShare', label: 'Third colours', after: '% of it', min: 0, max: 100, step: 0.5, times: 100, empty: 'any' })}
      ${this.number({ key: 'maxEdgeShare', label: "Ink on the sheet's outer 10 mm", after: '% of it', min: 0, max: 100, step: 0.5, times: 100, empty: 'any' })}
      <p class="soft small">A third colour is further than ΔE 10 from the paper and from every ink alone on it.</p>
    `,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-limits': WallLimits;
  }
}
