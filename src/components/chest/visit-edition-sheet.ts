import { html, nothing, render } from 'lit';
import { type EditionFacts, editionFacts } from '../../engine/log/edition.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import { layText } from './ticket-table.ts';

/** What only the artist can say. */
export type EditionWords = Record<'artist' | 'title' | 'year' | 'workshop' | 'dates' | 'screens' | 'other', string>;

const STYLE = `
  @page { margin: 18mm; }
  body { font: 11pt/1.45 system-ui, sans-serif; color: #000; margin: 0; }
  h1 { font-size: 20pt; margin: 0 0 4mm; } h2 { font-size: 12pt; margin: 6mm 0 1mm; }
  table { border-collapse: collapse; width: 100%; } td, th { text-align: left; padding: 1mm 4mm 1mm 0; border-bottom: 0.2mm solid #999; font-weight: 400; vertical-align: top; }
  tr { break-inside: avoid; } p { margin: 0 0 2mm; } .sign { margin-top: 14mm; }`;

function pulls(facts: EditionFacts) {
  return facts.sequence.map((pull, i) => html`<tr><td>${i + 1}</td><td>Screen ${pull.screen}</td><td>${pull.ink}</td><td>${pull.strokes === 1 ? '1 stroke' : `${pull.strokes} strokes`}</td><td>${layText(pull)}</td></tr>`);
}

function page(recipe: Recipe, words: EditionWords, size: readonly [string, string][]) {
  const facts = editionFacts(recipe);
  const head: [string, string][] = [
    ['Artist', words.artist],
    ['Title', words.title],
    ['Year of printing', words.year],
    ['Medium', 'Screenprint'],
    ['Workshop and printer', words.workshop],
    ['Dates of printing', words.dates],
    ...size,
    ['Other editions or states', words.other],
    ['Paper', facts.paper],
  ];
  return html`<style>${STYLE}</style>
    <h1>Documentation of an edition</h1>
    <table>${head.map(([name, value]) => html`<tr><th>${name}</th><td>${value === '' ? '—' : value}</td></tr>`)}</table>
    <h2>Inks</h2>
    <table>${facts.inks.map((ink) => html`<tr><th>${ink.name}</th><td>${ink.mix.length === 0 ? 'as it is' : `${ink.mix.map((part) => `${part.parts} ${part.name}`).join(', ')} (parts by weight)`}</td></tr>`)}</table>
    <h2>Screens</h2>
    <table>${facts.screens.map((screen) => html`<tr><th>${screen.number} ${screen.name}</th><td>${screen.mesh}</td></tr>`)}</table>
    <p>Fate of the screens: ${words.screens === '' ? '—' : words.screens}</p>
    <h2>Sequence, first down first</h2>
    <table>${pulls(facts)}</table>
    ${recipe.note === '' ? nothing : html`<p>Note: ${recipe.note}</p>`}
    <p class="sign">Signature of the artist ______________________ &nbsp; Approved by ______________________</p>
    <p>The numerator is not the order of printing. This sheet is not legal advice: what must be disclosed depends on where a print is sold.</p>`;
}

/** Prints the documentation sheet by itself; the browser's dialog also saves it as PDF. */
export function printEdition(host: ParentNode, recipe: Recipe, words: EditionWords, size: readonly [string, string][]): void {
  host.querySelector('iframe')?.remove();
  const frame = document.createElement('iframe');
  frame.title = 'Documentation sheet';
  frame.style.cssText = 'position:fixed;width:0;height:0;border:0';
  host.append(frame);
  const { contentDocument, contentWindow } = frame;
  contentDocument!.title = `${words.title}, documentation`;
  render(page(recipe, words, size), contentDocument!.body);
  contentWindow!.print();
}
