/** Languages that the app speaks, with what each is called in itself and how its numbers and days are written. */
export const LANGUAGES = {
  en: { name: 'English', numbers: 'en', days: 'en-GB' },
  de: { name: 'Deutsch', numbers: 'de', days: 'de' },
} as const;

export type Language = keyof typeof LANGUAGES;

let spoken: Language = 'en';
let translated: ReadonlyMap<string, object> = new Map();
/** The words that were given out, each with the English that it is of. */
const given = new Map<string, { words: object; english: object }>();

/** The language that is spoken until the page is loaded anew. */
export function language(): Language {
  return spoken;
}

/** How numbers are written in it, as Intl names it. */
export function numberLocale(): string {
  return LANGUAGES[spoken].numbers;
}

/** How days and times are written in it, as Intl names it. */
export function dayLocale(): string {
  return LANGUAGES[spoken].days;
}

/**
 * Chooses the language. Words that a module has put into its own constants stay as they are, so that a page
 * does this before it loads its modules; a worker, whose sentences are made when they are asked for, may do it later.
 * @param catalogues by the names that they have in `speak`
 */
export function speakIn(chosen: Language, catalogues: ReadonlyMap<string, object>): void {
  spoken = chosen;
  translated = catalogues;
  for (const [name, { words, english }] of given) Object.assign(words, english, translation(name));
}

/**
 * The words of a part of the app in the language that is spoken; English where they are not translated.
 * @param name the catalogue's path below `en/`, without its ending
 */
export function speak<Words extends object>(name: string, english: Words): Words {
  const words: Words = { ...english, ...translation(name) };
  given.set(name, { words, english });
  return words;
}

function translation(name: string): object | undefined {
  const words = translated.get(name);
  return words === undefined ? undefined : Object.fromEntries(Object.entries(words).map(([key, entry]) => [key, inItsNumbers(entry)]));
}

/** A sentence that writes fractions that it is given as its language does. */
function inItsNumbers(entry: unknown): unknown {
  return typeof entry === 'function' ? (...filled: unknown[]) => entry(...filled.map(written)) : entry;
}

function written(value: unknown): unknown {
  if (typeof value === 'number') return Number.isFinite(value) && !Number.isInteger(value) ? String(value).replace('.', ',') : value;
  // Sentences of many places take them by name.
  if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype || '_$litType$' in value)
    return value;
  return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, written(each)]));
}

/** A word or sentence for each kind of number that Intl tells apart in a language. */
export type PluralForms = Partial<Record<Intl.LDMLPluralRule, string>> & { readonly other: string };

// Made once a language: a wall that hangs says hundreds of numbers a second.
const rules = new Map<Language, Intl.PluralRules>();
const numbers = new Map<Language, Intl.NumberFormat>();

/** The form that goes with a number: 'print' or 'prints'. */
export function plural(count: number, forms: PluralForms): string {
  let rule = rules.get(spoken);
  if (rule === undefined) rules.set(spoken, (rule = new Intl.PluralRules(spoken)));
  return forms[rule.select(count)] ?? forms.other;
}

/** The number and the form that goes with it: '1 print', '1,200 prints'. */
export function counted(count: number, forms: PluralForms): string {
  let number = numbers.get(spoken);
  if (number === undefined) numbers.set(spoken, (number = new Intl.NumberFormat(numberLocale())));
  // A fraction that a translation was given is written already.
  return `${typeof count === 'number' ? number.format(count) : String(count)} ${plural(count, forms)}`;
}

/** A number with so many decimals, as the language writes them: '8.2', '8,2'. */
export function fixed(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return spoken === 'en' ? text : text.replace('.', ',');
}

/** A phrase with a capital, as a sentence begins. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A sentence as it goes on within another: with a small letter, but for languages whose nouns have capitals. */
export function uncapital(text: string): string {
  return spoken === 'de' ? text : text.charAt(0).toLowerCase() + text.slice(1);
}

/** A name as it stands within a sentence: in small letters, but for languages whose nouns have capitals. */
export function lowered(text: string): string {
  return spoken === 'de' ? text : text.toLowerCase();
}

/** A sentence with places for what is no plain text, in the order of the language: its parts, one after the other. */
export function parts(texts: TemplateStringsArray, ...values: readonly unknown[]): readonly unknown[] {
  return texts.flatMap((text, i) => (i < values.length ? [text, values[i]] : [text]));
}
