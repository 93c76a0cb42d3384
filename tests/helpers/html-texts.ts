/** What a template of html says by itself: text between tags, and the values of attributes. */
export interface HtmlText {
  /** The attribute's name; '' for text between tags. */
  attribute: string;
  text: string;
  line: number;
}

interface Template {
  tag: string;
  line: number;
  /** Its text, with \u0000 where a value stands. */
  text: string;
}

const HOLE = '\u0000';

/** Reads TypeScript sign by sign for its tagged templates; those within values of others stand by themselves. */
class Reader {
  private at = 0;
  readonly found: Template[] = [];
  private readonly source: string;

  constructor(source: string) {
    this.source = source;
  }

  /** Reads code until the brace that ends it. */
  code(): void {
    let deep = 0;
    for (; this.at < this.source.length; this.at++) {
      const sign = this.source.charAt(this.at);
      const next = this.source.charAt(this.at + 1);
      if (sign === '/' && next === '/') this.skipTo('\n');
      else if (sign === '/' && next === '*') this.skipTo('*/');
      else if (sign === '/' && this.pattern()) this.skipPattern();
      else if (sign === "'" || sign === '"') this.skipText(sign);
      else if (sign === '`') this.template();
      else if (sign === '{') deep++;
      else if (sign === '}' && --deep < 0) return;
    }
  }

  private skipTo(end: string): void {
    const found = this.source.indexOf(end, this.at + 1);
    this.at = found < 0 ? this.source.length : found + end.length - 1;
  }

  /** Whether a slash begins a regular expression: nothing stands before it that could be divided. */
  private pattern(): boolean {
    return /(^|[(,=:[!&|?{};>\n]|return|=>)\s*$/u.test(this.source.slice(Math.max(0, this.at - 20), this.at));
  }

  private skipPattern(): void {
    let inClass = false;
    for (this.at++; this.at < this.source.length; this.at++) {
      const sign = this.source.charAt(this.at);
      if (sign === '\\') this.at++;
      else if (sign === '[') inClass = true;
      else if (sign === ']') inClass = false;
      else if (sign === '/' && !inClass) return;
    }
  }

  private skipText(end: string): void {
    for (this.at++; this.at < this.source.length && this.source.charAt(this.at) !== end; this.at++) {
      if (this.source.charAt(this.at) === '\\') this.at++;
    }
  }

  private template(): void {
    const tag = /[\w$]*$/u.exec(this.source.slice(Math.max(0, this.at - 20), this.at))?.[0] ?? '';
    const line = this.source.slice(0, this.at).split('\n').length;
    let text = '';
    for (this.at++; this.at < this.source.length && this.source.charAt(this.at) !== '`'; this.at++) {
      const sign = this.source.charAt(this.at);
      if (sign === '\\') text += this.source.charAt(++this.at);
      else if (sign === '$' && this.source.charAt(this.at + 1) === '{') {
        this.at += 2;
        this.code();
        text += HOLE;
      } else text += sign;
    }
    this.found.push({ tag, line, text });
  }
}

/** All that the html and svg templates of a TypeScript file say by themselves, with letters or without. */
export function htmlTexts(source: string): HtmlText[] {
  const reader = new Reader(source);
  reader.code();
  return reader.found.filter(({ tag }) => tag === 'html' || tag === 'svg').flatMap(textsOf);
}

function textsOf({ text, line }: Template): HtmlText[] {
  const plain = text.replace(/<!--.*?-->/gsu, '');
  const between = plain.replace(/<\/?[a-zA-Z][^>]*>/gu, HOLE).split(HOLE);
  const attributes = [...plain.matchAll(/\s([.?@]?[\w-]+)="([^"]*)"/gu)].map(([, attribute = '', value = '']) => ({
    attribute,
    text: value,
  }));
  return [...between.map((each) => ({ attribute: '', text: each })), ...attributes].map((each) => ({
    ...each,
    text: each.text.replaceAll(HOLE, ' ').trim(),
    line,
  }));
}
