import { noChange } from 'lit';
import { directive, Directive, type ElementPart } from 'lit/directive.js';

/** Fields in which something stands that their `change` has not told of yet. */
const typing = new WeakSet<Element>();
const heard = new WeakSet<Element>();

class UnlessTyped extends Directive {
  render(_value: string): typeof noChange {
    return noChange;
  }

  override update({ element }: ElementPart, [value]: [string]): typeof noChange {
    const input = element as HTMLInputElement;
    if (!heard.has(input)) {
      heard.add(input);
      const told = (): boolean => typing.delete(input);
      input.addEventListener('input', () => typing.add(input));
      // Before the field's own listener, which may draw at once.
      input.addEventListener('change', told, { capture: true });
      input.addEventListener('blur', told);
    }
    if (input.value !== value && !typing.has(input)) input.value = value;
    return noChange;
  }
}

/**
 * For a text field: puts a value into it, whatever stood there, but never over what someone is typing and has
 * not ended yet, as a page that draws anew while they type would.
 */
export const unlessTyped = directive(UnlessTyped);
