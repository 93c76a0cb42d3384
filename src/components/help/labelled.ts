import { html } from 'lit';

/** A sentence in which labels of the app stand between asterisks, each shown strong. */
export function labelled(text: string) {
  return text.split('*').map((part, i) => (i % 2 === 1 ? html`<b>${part}</b>` : part));
}
