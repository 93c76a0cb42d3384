import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { defined } from '../../../engine/base/at.ts';
import type { Problem } from '../../../engine/base/error.ts';
import type { CgatsSample } from '../../../engine/ink/cgats/read-cgats.ts';
import { controls } from '../../ui/controls-style.ts';
import { FileReading } from '../../ui/files/file-reading.ts';
import { closeStackHost } from '../../ui/layout-style.ts';
import '../../ui/kit/fold.ts';
import { Work } from '../../ui/work.ts';
import './file-well.ts';
import { say } from '../../words/en/inks/add.ts';

/** Codes that only remark; the samples they speak of were read. */
const REMARKS = new Set(['cgats.extended', 'cgats.scale-doubtful', 'cgats.coarse', 'cgats.illuminant', 'cgats.field-count']);

/** A measurement file as it was read. */
export interface Measurements {
  fileName: string;
  samples: CgatsSample[];
  problems: Problem[];
}

/** Chooses a text file of measurements, or takes one that is dropped. Sends `read`. */
@customElement('cgats-file')
export class CgatsFile extends LitElement {
  static override styles = [
    controls,
    closeStackHost,
    css`
      .file {
        overflow-wrap: anywhere;
      }
      .refusal {
        color: var(--accent);
        overflow-wrap: anywhere;
      }
      ps-fold {
        font-size: var(--type-small);
      }
      ul {
        margin: var(--space-3) 0 0;
        padding-left: var(--space-7);
        max-height: 180px;
        overflow: auto;
        font-size: var(--type-small);
        overflow-wrap: anywhere;
      }
    `,
  ];

  /** What was read before; stays until another file is read whole. */
  @property({ attribute: false }) measurements: Measurements | null = null;
  private readonly file = new FileReading(this);
  private readonly reading = new Work<Measurements>(this, {
    found: (measurements) => this.dispatchEvent(new CustomEvent<Measurements>('read', { detail: measurements })),
  });

  private take(file: File): void {
    void this.reading.start(async () => {
      const { samples, problems } = await this.file.read('measurements', file);
      if (samples.length > 0) return { fileName: file.name, samples, problems };
      const spent = problems.find(({ code }) => !REMARKS.has(code)) ?? problems[0];
      throw new Error(spent?.message ?? say.holdsNoMeasurements(file.name));
    });
  }

  override render() {
    const read = this.measurements;
    const faults = read?.problems.filter(({ code }) => !REMARKS.has(code)) ?? [];
    const count = read?.problems.length ?? 0;
    return html`
      <file-well
        label=${read === null ? say.chooseMeasurementFile : say.anotherMeasurementFile}
        .busy=${this.reading.running ? say.reading : ''}
        @file=${(event: CustomEvent<File>) => this.take(event.detail)}
      >
        ${
          read === null
            ? html`<p class="small soft">${say.measurementFileIsText}</p>`
            : html`<p class="file" role="status"><strong>${read.fileName}</strong> <span class="soft">${say.samples(read.samples.length)}</span></p>`
        }
        ${this.reading.failure === '' ? nothing : html`<p slot="after" class="refusal small" role="alert">${say.nothingWasChanged(this.reading.failure)}</p>`}
      </file-well>
      ${this.file.line()}
      ${
        count === 0
          ? nothing
          : html`<ps-fold quiet label=${faults.length === 0 ? say.remarks(count) : say.faultsRemarksWhatIs(faults.length, count - faults.length)}>
            <ul>
              ${defined(read).problems.map(({ message }) => html`<li>${message}</li>`)}
            </ul>
          </ps-fold>`
      }
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'cgats-file': CgatsFile;
  }
}
