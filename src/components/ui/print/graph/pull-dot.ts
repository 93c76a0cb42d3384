import { nothing, svg } from 'lit';
import type { Pull } from '../../../../engine/stack/types.ts';
import type { Studio } from '../../../../engine/studio/studio.ts';
import { inkHexes, writingOn } from '../../kit/ink-chip.ts';
import { pullWords } from '../../words.ts';
import type { Dot } from './order-graph-layout.ts';

/** A pull in a graph, and what is done with it. */
export interface DotOf {
  pull: Pull;
  /** Its place in the stack. */
  at: number;
  drawer: Studio;
  selected: boolean;
  /** Whether the keyboard comes to it first. */
  first: boolean;
  radius: number;
  /** How far the ring of a selected one stands off it. */
  halo: number;
  /** Whether it stands back behind others. */
  apart?: boolean;
  choose: () => void;
  focused: () => void;
  /** Other keys than those that choose. */
  key: (event: KeyboardEvent) => void;
}

/** Smaller dots have no room for a number, px. */
const LEAST_WRITTEN = 8;

/** A pull as a dot in its ink, with its number, that can be chosen. Wants `graphDotStyle`. */
export function pullDot({ x, y }: Dot, { pull, at, drawer, selected, first, radius, halo, apart = false, choose, focused, key }: DotOf) {
  const ink = drawer.inks.find((entry) => entry.id === pull.ink);
  return svg`<g
    class="dot ${selected ? 'selected' : ''} ${apart ? 'apart' : ''}"
    data-at=${at}
    role="button"
    aria-pressed=${selected}
    aria-label=${pullWords(pull, at, drawer)}
    tabindex=${first ? 0 : -1}
    transform="translate(${x.toFixed(2)} ${y.toFixed(2)})"
    @click=${choose}
    @focus=${focused}
    @keydown=${(event: KeyboardEvent) => onDotKey(event, choose, key)}
  >
    <circle class="halo" r=${radius + halo} />
    <circle class="ink" r=${radius} fill=${ink === undefined ? 'var(--no-ink)' : inkHexes(ink).overWhite} />
    ${radius >= LEAST_WRITTEN ? svg`<text fill=${writingOn(ink)}>${at + 1}</text>` : nothing}
  </g>`;
}

/** What Enter and the space bar do on what a graph shows; other keys go on. */
export function onDotKey(event: KeyboardEvent, choose: () => void, key: (event: KeyboardEvent) => void): void {
  if (event.key !== 'Enter' && event.key !== ' ') return key(event);
  event.preventDefault();
  choose();
}

/** How far an arrow key goes along what a graph shows: 1, -1, or 0 for any other key. */
export function arrowStep({ key, altKey }: KeyboardEvent): number {
  if (altKey) return 0;
  return { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[key] ?? 0;
}
