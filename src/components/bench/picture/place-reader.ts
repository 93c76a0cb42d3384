import type { ReactiveControllerHost } from 'lit';
import type { PlaceReading } from '../../../engine/stack/look/read-place.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { engineFor } from '../../../workers/client/client.ts';
import { Work } from '../../ui/work.ts';

/** A place that was read, and of which pulls. */
export interface PlaceRead {
  /** Mm from the sheet's top left. */
  place: { xMm: number; yMm: number };
  reading: PlaceReading;
  of: readonly [readonly Pull[], Studio];
}

/** The one place of the picture that is read, read again whenever the stack changes. */
export class PlaceReader {
  private readonly work: Work<PlaceRead>;
  private readonly host: ReactiveControllerHost;
  private wanted: PlaceRead['place'] | null = null;
  private asked: readonly [PlaceRead['place'], readonly Pull[], Studio] | null = null;

  constructor(host: ReactiveControllerHost, tell: (text: string) => void) {
    this.host = host;
    this.work = new Work<PlaceRead>(host, { failed: tell });
  }

  /** What was read last; null while nothing is. */
  get read(): PlaceRead | null {
    return this.wanted === null ? null : this.work.found;
  }

  /** Reads another place from now on; null for none. */
  want(place: PlaceRead['place'] | null): void {
    this.wanted = place;
    if (place === null) this.work.clear();
    this.host.requestUpdate();
  }

  /** Asks again when place or stack are others than those asked for last. */
  follow(pulls: readonly Pull[], drawer: Studio): void {
    const { wanted: place, asked } = this;
    if (place === null) {
      this.asked = null;
      return;
    }
    if (asked !== null && asked[0] === place && asked[1] === pulls && asked[2] === drawer) return;
    this.asked = [place, pulls, drawer];
    this.work.follow(async () => ({
      place,
      reading: await engineFor('picture').readPlace({ studio: drawer, pulls, ...place }),
      of: [pulls, drawer],
    }));
  }
}
