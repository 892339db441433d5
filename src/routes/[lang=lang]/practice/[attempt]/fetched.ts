/** What shows the parts of a page that not every page has; null where this one has none of them. */
export type Fetched = {
	readonly GaugePanel: typeof import('./figures/gauge-panel').default | null;
	readonly OvenChart: typeof import('./figures/oven-chart').default | null;
	readonly Case: typeof import('./figures/Case.svelte').default | null;
	readonly GunBench: typeof import('./figures/gun-bench').default | null;
	readonly FilmMap: typeof import('./figures/film-map').default | null;
	readonly Given: typeof import('./Given.svelte').default | null;
};

type Shown = {
	readonly figures: readonly { readonly kind: string }[];
	readonly given: readonly unknown[];
} | null;

/** Fetches what a page shows and no more: everything would make every drill heavy to load. */
export async function fetched(step: Shown, gun: { readonly map: object | null } | null): Promise<Fetched> {
	const kinds = new Set(step?.figures.map(({ kind }) => kind));
	return {
		GaugePanel: kinds.has('gauge-panel') ? (await import('./figures/gauge-panel')).default : null,
		OvenChart: kinds.has('oven-chart') ? (await import('./figures/oven-chart')).default : null,
		Case: kinds.has('case-file') ? (await import('./figures/Case.svelte')).default : null,
		GunBench: gun ? (await import('./figures/gun-bench')).default : null,
		FilmMap: gun?.map ? (await import('./figures/film-map')).default : null,
		Given: step?.given.length ? (await import('./Given.svelte')).default : null
	};
}
