import { html, nothing } from 'lit';
import type { FoundFigure } from '../../../engine/log/feedback/found-figure.ts';
import { pullsAnHour } from '../../../engine/log/feedback/pull-rate.ts';
import { registerFound } from '../../../engine/log/feedback/register.ts';
import { transferFound } from '../../../engine/log/feedback/transfer.ts';
import type { PressSettings } from '../../../engine/project/types.ts';
import { wholeFigures } from '../../../engine/visit/visit-figures.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import { counted } from '../../ui/words.ts';

/** A studio figure beside what the visit says of it, as it is shown and taken up. */
interface Row {
  key: 'pullsPerHour' | 'transfer' | 'registrationMm';
  label: string;
  unit: string;
  decimals: number;
  /** Shown value of a stored one: shares are shown in per cent. */
  scale: number;
  /** What the studio figure may be. */
  limits: readonly [number, number];
  found: FoundFigure;
}

function rowsOf(log: LogKeeper, press: PressSettings): Row[] {
  const { sheets, recipes, events } = log;
  const { strokeSeconds, lossMl } = wholeFigures(press);
  const rows: (Omit<Row, 'found'> & { found: FoundFigure | null })[] = [
    {
      key: 'pullsPerHour',
      label: 'Pulls per hour, by the ticks',
      unit: '/h',
      decimals: 0,
      scale: 1,
      limits: [1, 600],
      found: pullsAnHour(sheets, events, strokeSeconds),
    },
    {
      key: 'transfer',
      label: 'Ink that reaches the paper, by what was weighed',
      unit: '%',
      decimals: 0,
      scale: 100,
      limits: [0.1, 1],
      found: transferFound({ sheets, recipes }, events, lossMl),
    },
    {
      key: 'registrationMm',
      label: 'Register the table holds, by what was noted',
      unit: 'mm',
      decimals: 1,
      scale: 1,
      limits: [0, 10],
      found: registerFound(events),
    },
  ];
  return rows.flatMap((row) => (row.found === null ? [] : [{ ...row, found: row.found }]));
}

/**
 * What the visit says of the studio's figures, each to be taken up by hand; nothing where it says nothing.
 * @param take takes one up
 */
export function foundFigures(log: LogKeeper, press: PressSettings, take: (change: Partial<PressSettings>) => void) {
  const rows = rowsOf(log, press);
  if (rows.length === 0) return nothing;
  return html`<section aria-labelledby="found">
    <h2 id="found">What this visit says of the studio figures</h2>
    <p class="soft small">The middle of what was found, set-up by set-up. Nothing changes until you take it up; then times and grams are worked out with it.</p>
    <div class="scroll" role="group" tabindex="0" aria-label="Figures found">
      <table>
        <thead>
          <tr>
            <th scope="col">Figure</th>
            <th scope="col" class="number">Yours</th>
            <th scope="col" class="number">Found</th>
            <th scope="col">In</th>
            <th scope="col">From, to</th>
            <th></th>
          </tr>
        </thead>
        <tbody>
          ${rows.map((row) => figureRow(row, wholeFigures(press)[row.key], take))}
        </tbody>
      </table>
    </div>
  </section>`;
}

function figureRow(
  { key, label, unit, decimals, scale, limits, found }: Row,
  yours: number,
  take: (change: Partial<PressSettings>) => void,
) {
  const text = (value: number): string => (value * scale).toFixed(decimals);
  const value = Number((Math.round(found.value * scale * 10 ** decimals) / 10 ** decimals / scale).toFixed(4));
  const fits = value >= limits[0] && value <= limits[1];
  return html`<tr>
    <th scope="row">${label}</th>
    <td class="number">${text(yours)} ${unit}</td>
    <td class="number"><b>${text(found.value)} ${unit}</b></td>
    <td>${counted(found.setUps, 'set-up')}</td>
    <td>${text(found.least)} to ${text(found.most)} ${unit}</td>
    <td>
      ${
        text(value) === text(yours)
          ? 'as yours'
          : fits
            ? html`<button @click=${() => take({ [key]: value })}>Take ${text(value)} ${unit}</button>`
            : html`<span class="soft">no studio has that: look at what was ${key === 'transfer' ? 'weighed' : 'noted'}</span>`
      }
    </td>
  </tr>`;
}
