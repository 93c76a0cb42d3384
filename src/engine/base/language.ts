// For translations that were begun before the language moved; to be taken out with them.
export * from '../words/language.ts';
