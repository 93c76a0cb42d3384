/** Closest look: a tenth of a millimetre is then ten pixels wide. */
const MAX_PX_PER_MM = 100;
/** Room left around a whole sheet, px. */
const MARGIN_PX = 28;

/**
 * Which part of the sheet one looks at, and how closely. Shared by pictures that lie side by side,
 * so that both show the same place at the same zoom.
 */
export class SheetView extends EventTarget {
  /** Size of the frame one looks through, CSS px. */
  private frame = { widthPx: 0, heightPx: 0 };
  private sheet = { widthMm: 1, heightMm: 1 };
  /** null while the whole sheet is shown. */
  private near: { xMm: number; yMm: number; pxPerMm: number } | null = null;

  setFrame(widthPx: number, heightPx: number): void {
    if (widthPx === this.frame.widthPx && heightPx === this.frame.heightPx) return;
    this.frame = { widthPx, heightPx };
    this.changed();
  }

  /** The sheet that 'Whole sheet' shows. */
  setSheet(widthMm: number, heightMm: number): void {
    if (widthMm === this.sheet.widthMm && heightMm === this.sheet.heightMm) return;
    this.sheet = { widthMm, heightMm };
    this.changed();
  }

  get ready(): boolean {
    return this.frame.widthPx > 0 && this.frame.heightPx > 0;
  }

  get whole(): boolean {
    return this.near === null;
  }

  get wholePxPerMm(): number {
    const { widthPx, heightPx } = this.frame;
    const margin = Math.min(MARGIN_PX, widthPx / 12, heightPx / 12);
    return Math.max(0.01, Math.min((widthPx - 2 * margin) / this.sheet.widthMm, (heightPx - 2 * margin) / this.sheet.heightMm));
  }

  get pxPerMm(): number {
    return this.near?.pxPerMm ?? this.wholePxPerMm;
  }

  /** Where the sheet's top left lies in the frame, CSS px. */
  get origin(): { x: number; y: number } {
    const { xMm, yMm } = this.centre;
    return {
      x: this.frame.widthPx / 2 - xMm * this.pxPerMm,
      y: this.frame.heightPx / 2 - yMm * this.pxPerMm,
    };
  }

  private get centre(): { xMm: number; yMm: number } {
    return this.near ?? { xMm: this.sheet.widthMm / 2, yMm: this.sheet.heightMm / 2 };
  }

  /** The place of the sheet in the middle of the frame. */
  get middle(): { xMm: number; yMm: number } {
    const { xMm, yMm } = this.centre;
    return { xMm, yMm };
  }

  showWhole(): void {
    if (this.near === null) return;
    this.near = null;
    this.changed();
  }

  /** Closer (above 1) or further (below 1), keeping the place at a point of the frame where it is. */
  zoom(factor: number, x = this.frame.widthPx / 2, y = this.frame.heightPx / 2): void {
    const before = this.pxPerMm;
    const least = this.wholePxPerMm;
    const pxPerMm = Math.min(MAX_PX_PER_MM, before * factor);
    if (pxPerMm <= least * 1.001) {
      this.showWhole();
      return;
    }
    const { xMm, yMm } = this.centre;
    const fromX = (x - this.frame.widthPx / 2) * (1 / before - 1 / pxPerMm);
    const fromY = (y - this.frame.heightPx / 2) * (1 / before - 1 / pxPerMm);
    this.look(xMm + fromX, yMm + fromY, pxPerMm);
  }

  /** Moves the sheet under the frame, CSS px. */
  pan(dx: number, dy: number): void {
    if (this.near === null) return;
    const { xMm, yMm, pxPerMm } = this.near;
    this.look(xMm - dx / pxPerMm, yMm - dy / pxPerMm, pxPerMm);
  }

  private look(xMm: number, yMm: number, pxPerMm: number): void {
    // Some of the sheet always stays in sight.
    this.near = {
      xMm: Math.min(this.sheet.widthMm, Math.max(0, xMm)),
      yMm: Math.min(this.sheet.heightMm, Math.max(0, yMm)),
      pxPerMm,
    };
    this.changed();
  }

  private changed(): void {
    this.dispatchEvent(new Event('change'));
  }
}
