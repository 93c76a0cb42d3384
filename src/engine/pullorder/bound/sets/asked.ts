import { i32, u8 } from '../../../base/at.ts';

/** No answer. */
export const NONE = 255;

/** Places at first, and at most. */
const ROOM = { first: 1 << 9, most: 1 << 15 };

/** Answers to what was asked lately: each question has one place, and what falls there later takes it. */
export class Asked {
  readonly #words: number;
  #questions: Int32Array;
  #answers: Uint8Array;
  #misses = 0;
  /** Where the last question fell. */
  #slot = 0;

  /** @param words 32-bit words of a question */
  constructor(words: number) {
    this.#words = words;
    this.#questions = new Int32Array(ROOM.first * words);
    this.#answers = new Uint8Array(ROOM.first).fill(NONE);
  }

  /** What was answered to a question, `NONE` when that is forgotten or was never known. */
  find(question: Int32Array): number {
    const words = this.#words;
    if (this.#misses > 2 * this.#answers.length && this.#answers.length < ROOM.most) this.#grow();
    let h = 0;
    for (let w = 0; w < words; w++) h = Math.imul(h ^ i32(question, w), 0x9e3779b1) ^ (h >>> 15);
    const slot = (h ^ (h >>> 14)) & (this.#answers.length - 1);
    this.#slot = slot;
    const at = slot * words;
    let w = 0;
    while (w < words && this.#questions[at + w] === question[w]) w++;
    if (w === words) return u8(this.#answers, slot);
    this.#misses++;
    this.#questions.set(question, at);
    this.#answers[slot] = NONE;
    return NONE;
  }

  /** Answers the question that `find` was asked last. */
  answer(answer: number): number {
    return (this.#answers[this.#slot] = answer);
  }

  /** More room; all is forgotten. */
  #grow(): void {
    const room = 4 * this.#answers.length;
    this.#questions = new Int32Array(room * this.#words);
    this.#answers = new Uint8Array(room).fill(NONE);
    this.#misses = 0;
  }
}
