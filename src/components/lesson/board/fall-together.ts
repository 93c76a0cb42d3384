import { num } from '../../../engine/base/at.ts';
import type { LessonAnswer } from './lesson-run.ts';

/** Long enough to be followed, ms. */
const FALL_MS = 650;

/** A card that shows a picture, where it stood, and the orders that print it. */
interface Stood {
  box: DOMRect;
  orders: readonly number[];
  canvas: HTMLCanvasElement | null;
}

/**
 * Lets pictures that have become one move onto the one that stays, and those that part come from the one
 * they were: so a change is seen, and not only its end.
 */
export class FallTogether {
  private stood = new Map<number, Stood>();
  private answer: LessonAnswer | null = null;

  /** Remembers where the cards stand; to be called before they are drawn anew. */
  before(cards: Iterable<HTMLElement>): void {
    this.stood = new Map();
    for (const card of cards) {
      const first = Number(card.dataset['first']);
      const orders = this.answer?.result.groups.find((group) => group[0] === first) ?? [];
      const canvas = card.querySelector('ps-picture')?.shadowRoot?.querySelector('canvas') ?? null;
      this.stood.set(first, { box: card.getBoundingClientRect(), orders, canvas: canvas === null ? null : copyOf(canvas) });
    }
  }

  /**
   * Moves what was one and what became one; to be called when they are drawn.
   * @param layer where the moving pictures lie, over all cards
   */
  after(cards: readonly HTMLElement[], answer: LessonAnswer, layer: HTMLElement): void {
    const same = this.answer?.result.orders.length === answer.result.orders.length;
    this.answer = answer;
    if (!same || cards.length > MOST || matchMedia('(prefers-reduced-motion: reduce)').matches) return;
    const now = new Map(cards.map((card) => [Number(card.dataset['first']), card]));
    const frame = layer.getBoundingClientRect();
    for (const [first, old] of this.stood) {
      if (now.has(first) || old.canvas === null) continue;
      const group = answer.result.groups.find((each) => each.includes(first));
      const target = group === undefined ? undefined : now.get(num(group, 0));
      if (target !== undefined) fall(old.canvas, old.box, target.getBoundingClientRect(), { layer, frame });
    }
    for (const [first, card] of now) {
      if (this.stood.has(first)) continue;
      const from = [...this.stood.values()].find(({ orders }) => orders.includes(first));
      if (from !== undefined) come(card, from.box);
    }
  }
}

/** Beyond so many cards, none is followed by the eye. */
const MOST = 48;

function copyOf(canvas: HTMLCanvasElement): HTMLCanvasElement {
  const copy = document.createElement('canvas');
  copy.width = canvas.width;
  copy.height = canvas.height;
  if (canvas.width > 0 && canvas.height > 0) copy.getContext('2d')?.drawImage(canvas, 0, 0);
  return copy;
}

function fall(canvas: HTMLCanvasElement, from: DOMRect, to: DOMRect, { layer, frame }: { layer: HTMLElement; frame: DOMRect }): void {
  const { style } = canvas;
  style.left = `${from.left - frame.left}px`;
  style.top = `${from.top - frame.top}px`;
  style.width = `${from.width}px`;
  canvas.setAttribute('aria-hidden', 'true');
  layer.append(canvas);
  const onto = `translate(${to.left - from.left}px, ${to.top - from.top}px) scale(${to.width / Math.max(1, from.width)})`;
  const run = canvas.animate(
    [
      { transform: 'none', opacity: 1 },
      { transform: onto, opacity: 0.9, offset: 0.8 },
      { transform: onto, opacity: 0 },
    ],
    {
      duration: FALL_MS,
      easing: 'ease-in-out',
    },
  );
  const gone = (): void => canvas.remove();
  run.finished.then(gone, gone);
}

function come(card: HTMLElement, from: DOMRect): void {
  const to = card.getBoundingClientRect();
  card.animate(
    [
      { transform: `translate(${from.left - to.left}px, ${from.top - to.top}px)`, opacity: 0.4 },
      { transform: 'none', opacity: 1 },
    ],
    {
      duration: FALL_MS,
      easing: 'ease-out',
    },
  );
}
