import { afterEach, describe, expect, it } from 'vitest';
import { language, speak, speakIn } from '../../src/engine/words/language.ts';
import { inItsLanguage, type Spoken } from '../../src/workers/api/spoken.ts';

afterEach(() => speakIn('en', new Map()));

const say = speak('test/worker', { done: 'Done.' });

function worker(german: () => Promise<ReadonlyMap<string, object>>) {
  const page = new EventTarget();
  const deeds = inItsLanguage({ tell: (what: string) => `${what}: ${say.done}`, kind: 'test' }, page, german);
  return {
    deeds,
    tell: deeds['tell'] as (what: string) => string | Promise<string>,
    speak: (data: Spoken) => page.dispatchEvent(new MessageEvent('message', { data })),
  };
}

describe('a worker', () => {
  it('should answer at once in English when nothing is told', () => {
    const { tell, deeds } = worker(() => Promise.reject(new Error('not asked for')));
    expect(tell('Cut')).toBe('Cut: Done.');
    expect(deeds['kind']).toBe('test');
  });

  it('should answer in the language of its page, also what was asked while the words came', async () => {
    const { tell, speak } = worker(async () => new Map([['test/worker', { done: 'Fertig.' }]]));
    speak({ spoken: 'de' });
    expect(await tell('Schnitt')).toBe('Schnitt: Fertig.');
    expect(language()).toBe('de');
    expect(tell('Schnitt')).toBe('Schnitt: Fertig.');
  });

  it('should work on in English where the words cannot be had', async () => {
    const { tell, speak } = worker(() => Promise.reject(new Error('offline')));
    speak({ spoken: 'de' });
    expect(await tell('Cut')).toBe('Cut: Done.');
  });
});
