import { html, nothing } from 'lit';
import type { FoundFigure } from '../../../engine/log/feedback/found-figure.ts';
import { pullsAnHour } from '../../../engine/log/feedback/pull-rate.ts';
import { registerFound } from '../../../engine/log/feedback/register.ts';
import { transferFound } from '../../../engine/log/feedback/transfer.ts';
import type { PressSettings } from '../../../engine/project/types.ts';
import { wholeFigures } from '../../../engine/visit/visit-figures.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import { say } from '../../words/en/press/log.ts';

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
      label: say.pullsPerHourBy,
      unit: '/h',
      decimals: 0,
      scale: 1,
      limits: [1, 600],
      found: pullsAnHour(sheets, events, strokeSeconds),
    },
    {
      key: 'transfer',
      label: say.inkThatReachesPaper,
      unit: '%',
      decimals: 0,
      scale: 100,
      limits: [0.1, 1],
      found: transferFound({ sheets, recipes }, events, lossMl),
    },
    {
      key: 'registrationMm',
      label: say.registerTableHoldsBy,
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
    <h2 id="found">${say.whatThisVisitSays}</h2>
    <p class="soft small">${say.middleOfWhatWas}</p>
    <div class="scroll" role="group" tabindex="0" aria-label=${say.figuresFound}>
      <table>
        <thead>
          <tr>
            <th scope="col">${say.figure}</th>
            <th scope="col" class="number">${say.yours}</th>
            <th scope="col" class="number">${say.found}</th>
            <th scope="col">${say.in}</th>
            <th scope="col">${say.fromTo}</th>
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
    <td>${say.setUps(found.setUps)}</td>
    <td>${say.to(text(found.least), text(found.most))} ${unit}</td>
    <td>
      ${
        text(value) === text(yours)
          ? say.asYours
          : fits
            ? html`<button @click=${() => take({ [key]: value })}>${say.take(text(value))} ${unit}</button>`
            : html`<span class="soft">${say.noStudioHasThat(key === 'transfer')}</span>`
      }
    </td>
  </tr>`;
}
