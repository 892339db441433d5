import type { State } from '$lib/records';

/** Parts of the site that answer what a proving drill asks. */
const BOOK = /^\/\[lang=lang\]\/(rules|lessons|practice|panels|bench-card|incidents|crew\/reports)(\/|$)/;

/** Whether a route, named as kit names it, is part of the book. */
export const isBook = (route: string | null): boolean => BOOK.test(route ?? '');

/** Whether the book is closed to a person: while they have a proving drill open. */
export const closedBook = (state: State, person: string): boolean => state.attempts.open.has(person);
