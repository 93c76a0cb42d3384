import type { ReactiveControllerHost } from 'lit';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import { engineFor } from '../../../workers/client/client.ts';
import { Work } from '../../ui/work.ts';

/** A stack whose whole sheet is to be drawn. */
export interface SheetWanted {
  pulls: readonly Pull[];
  drawer: Studio;
  heightPx: number;
  relative: boolean;
}

/** One picture of a whole sheet, drawn anew whenever what is wanted is another. */
export class SheetPicture {
  private readonly work: Work<Picture>;
  private asked: SheetWanted | null = null;

  constructor(host: ReactiveControllerHost) {
    this.work = new Work<Picture>(host);
  }

  /** The newest picture; null until there is one. */
  get picture(): Picture | null {
    return this.work.found;
  }

  /** Why there is none, in a sentence; '' when nothing is wrong. */
  get failure(): string {
    return this.work.failure;
  }

  /** @param wanted what is to be seen; null for nothing */
  want(wanted: SheetWanted | null): void {
    if (wanted === null) {
      if (this.asked !== null) this.work.clear();
      this.asked = null;
      return;
    }
    const { asked } = this;
    const same =
      asked !== null &&
      asked.pulls === wanted.pulls &&
      asked.drawer === wanted.drawer &&
      asked.heightPx === wanted.heightPx &&
      asked.relative === wanted.relative;
    if (same) return;
    this.asked = wanted;
    const { pulls, drawer: studio, heightPx, relative } = wanted;
    this.work.follow(() => engineFor('picture').thumbnail({ studio, pulls, heightPx, relative }));
  }
}
