import { html } from 'lit';
import { say } from '../../words/en/ui/print.ts';

/** A drawn print, or its bare paper while it is drawn: a browser shows an image without a source as broken. */
export function printImage(url: string | null, words: string, widthOverHeight: number) {
  const style = `aspect-ratio: ${widthOverHeight}`;
  return url === null || url === ''
    ? html`<div class="print" role="img" aria-label=${say.notDrawnYet(words)} style=${style}></div>`
    : html`<img class="print" src=${url} alt=${words} style=${style} />`;
}
