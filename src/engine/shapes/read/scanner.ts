const BLANK = /\s/u;

/**
 * Reads a text from its start to its end, each sign once, so that no text takes longer than its length
 * says: patterns with repeats side by side take time by the square of it, or worse.
 */
export class Scanner {
  readonly text: string;
  at = 0;

  constructor(text: string) {
    this.text = text;
  }

  get done(): boolean {
    return this.at >= this.text.length;
  }

  /** The next sign; '' at the end. */
  get sign(): string {
    return this.text.charAt(this.at);
  }

  skipBlanks(): void {
    while (!this.done && BLANK.test(this.sign)) this.at++;
  }

  /** Takes a sign if it is the next one. */
  take(sign: string): boolean {
    if (this.done || this.sign !== sign) return false;
    this.at++;
    return true;
  }

  /** Latin letters from here on. */
  letters(): string {
    const from = this.at;
    while (isLetter(this.text.charCodeAt(this.at))) this.at++;
    return this.text.slice(from, this.at);
  }

  /**
   * A number as SVG writes it: sign, digits, point, exponent; '1.' and '.5' too.
   * @returns null when none begins here, and nothing is taken; may be infinite
   */
  number(): number | null {
    const from = this.at;
    if (this.sign === '+' || this.sign === '-') this.at++;
    let digits = this.digits();
    if (this.take('.')) digits += this.digits();
    if (digits === 0) {
      this.at = from;
      return null;
    }
    const end = this.at;
    if (this.take('e') || this.take('E')) {
      if (this.sign === '+' || this.sign === '-') this.at++;
      if (this.digits() === 0) this.at = end;
    }
    return Number(this.text.slice(from, this.at));
  }

  private digits(): number {
    const from = this.at;
    while (isDigit(this.text.charCodeAt(this.at))) this.at++;
    return this.at - from;
  }
}

function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

function isLetter(code: number): boolean {
  return (code >= 65 && code <= 90) || (code >= 97 && code <= 122);
}
