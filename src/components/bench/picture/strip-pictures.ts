import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { defined } from '../../../engine/base/at.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { OverlapEdge, Picture } from '../../../workers/api/picture-api.ts';
import { engineFor } from '../../../workers/client/client.ts';
import { Work, type WorkListener } from '../../ui/work.ts';

/** After an edit the large picture has the processor to itself for so long, ms. */
const STATES_AFTER_MS = 60;
/** Overlaps take the longest and are looked at last: once nothing was edited for so long, ms. */
const OVERLAPS_AFTER_MS = 250;

interface Question {
  pulls: readonly Pull[];
  drawer: Studio;
  relative: boolean;
  heightPx: number;
}

/**
 * States and overlaps of the stack on the Bench. They come from another worker than the large
 * picture, which must never wait for them.
 */
export class StripPictures implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private readonly listener: Pick<WorkListener<unknown>, 'failed' | 'settled'>;
  private asked: Question | null = null;
  private statesTimer: ReturnType<typeof setTimeout> | null = null;
  private overlapsTimer: ReturnType<typeof setTimeout> | null = null;
  pictures: readonly Picture[] = [];
  /** All overlapping pairs, also free swaps; null until they are known for the pulls asked last. */
  edges: readonly OverlapEdge[] | null = null;
  /** Whether the overlaps asked for last could not be found. */
  lost = false;

  private readonly states = new Work<readonly Picture[]>(null, {
    found: (pictures) => {
      this.pictures = pictures;
      this.host.requestUpdate();
    },
    failed: (sentence) => {
      // The states of another stack under these pulls would be untrue.
      this.pictures = [];
      this.host.requestUpdate();
      this.listener.failed?.(sentence);
    },
    settled: () => this.listener.settled?.(),
  });

  private readonly overlaps = new Work<{ edges: readonly OverlapEdge[]; question: Question }>(null, {
    found: ({ edges, question: { pulls, drawer: studio } }) => {
      if (this.asked?.pulls !== pulls || this.asked.drawer !== studio) return;
      this.edges = edges;
      this.host.requestUpdate();
    },
    failed: (sentence) => {
      this.lost = true;
      this.host.requestUpdate();
      this.listener.failed?.(sentence);
    },
  });

  /** @param listener hears why pictures or overlaps could not be worked out, and that pictures were drawn */
  constructor(host: ReactiveControllerHost, listener: Pick<WorkListener<unknown>, 'failed' | 'settled'>) {
    this.host = host;
    this.listener = listener;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.states.forget();
    this.overlaps.forget();
    if (this.statesTimer !== null) clearTimeout(this.statesTimer);
    if (this.overlapsTimer !== null) clearTimeout(this.overlapsTimer);
    this.statesTimer = this.overlapsTimer = this.asked = null;
  }

  /** Sees to it that pictures and overlaps of a stack come; nothing happens when they are there. */
  want(question: Question): void {
    const { asked } = this;
    const sameStack = asked?.pulls === question.pulls && asked.drawer === question.drawer;
    if (sameStack && asked.relative === question.relative && asked.heightPx === question.heightPx) return;
    this.asked = question;
    this.statesTimer ??= setTimeout(
      () => {
        this.statesTimer = null;
        this.drawStates(defined(this.asked));
      },
      asked === null ? 0 : STATES_AFTER_MS,
    );
    if (sameStack) return;
    this.edges = null;
    this.lost = false;
    if (this.overlapsTimer !== null) clearTimeout(this.overlapsTimer);
    this.overlapsTimer = setTimeout(() => this.findOverlaps(defined(this.asked)), asked === null ? 0 : OVERLAPS_AFTER_MS);
  }
  private drawStates({ drawer: studio, pulls, heightPx, relative }: Question): void {
    this.states.follow(() => engineFor('lesson').states({ studio: studio, pulls, heightPx, relative }));
  }

  private findOverlaps(question: Question): void {
    const { drawer: studio, pulls } = question;
    this.overlaps.follow(async () => ({ edges: await engineFor('lesson').overlaps({ studio: studio, pulls, minDeltaE: 0 }), question }));
  }
}
