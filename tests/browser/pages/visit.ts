import type { Viewer } from './filled-shop';

/** A page to look at and who looks. `path` is what follows the language. */
export interface Visit {
	readonly as: Viewer;
	readonly path: string;
}

export const visit = (as: Viewer, ...paths: readonly string[]): Visit[] =>
	paths.map((path) => ({ as, path }));
