// By themselves, so that a page knows what its address holds before it loads what reads it.

/** How the fragment of an address begins that holds a set-up. */
export const SET_UP_FRAGMENT = '#set-up=';

/** How the fragment of an address begins that holds a lesson. */
export const LESSON_FRAGMENT = '#lesson=';
