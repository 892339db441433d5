import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Actor, Actors } from './actors';
import type { FilledIn } from './filled-in';
import { formsOn, type Entries, type PageForm } from './page-form';
import { pathOf, placesOf, type Place } from './places';
import type { Route } from './route-tree';
import type { Stock } from './stock';

/** A form action at one real place, with the form each sender is shown there. */
export type Action = {
	readonly route: Route;
	readonly action: string;
	/** As the lists of exceptions and of right entries name it. */
	readonly at: string;
	readonly place: Place;
	readonly names: readonly string[];
	readonly boxes: readonly string[];
	readonly shown: ReadonlyMap<Actor, Entries>;
	/** Whoever is shown any form on the page. */
	readonly own: ReadonlySet<Actor>;
	/** Whether this is the first place at which the action is met, or the first at which its form is shown. */
	readonly first: boolean;
};

type Pages = ReadonlyMap<Actor, readonly PageForm[]>;

const named = ({ id }: Route, action: string) => `${id.replace('/[lang=lang]/', '')} ?/${action}`;

/** Names that stand in the components of a route, for forms nobody is shown as things are. */
function namesWritten(folder: string, { id }: Route): string[] {
	const at = join(folder, id);
	const components = readdirSync(at).filter((file) => file.endsWith('.svelte'));
	const found = components.flatMap((file) => [
		...readFileSync(join(at, file), 'utf8').matchAll(/\bname(?:="|: ')([\w.-]+)["']/g)
	]);
	return found.map(([, name]) => name!);
}

const fillIn = (entries: Entries, filled: FilledIn): Entries => [
	...entries.filter(([name]) => !(name in filled)),
	...Object.entries(filled)
];

async function look(route: Route, place: Place, actors: Actors, baseURL: string): Promise<Pages> {
	const pages = new Map<Actor, PageForm[]>();
	for (const actor of Object.values(actors)) {
		const path = pathOf(route, place, actor.lang);
		const page = await actor.browser.get(path, { maxRedirects: 0 });
		if (page.status() === 200) pages.set(actor, formsOn(await page.text(), new URL(path, baseURL)));
	}
	return pages;
}

const unique = (names: readonly string[]) => [...new Set(names)];

/** Looks at every page with a form action, as everybody, and notes the forms they are shown. */
export async function survey(
	{ routes, folder }: { routes: readonly Route[]; folder: string },
	{ actors, stock, filled }: { actors: Actors; stock: Stock; filled: Readonly<Record<string, FilledIn>> },
	baseURL: string
): Promise<Action[]> {
	const found: Action[] = [];
	for (const route of routes.filter(({ actions }) => actions.length)) {
		const looks: [Place, Pages][] = [];
		for (const place of placesOf(route, stock))
			looks.push([place, await look(route, place, actors, baseURL)]);
		const everywhere = looks.flatMap(([, pages]) => [...pages.values()].flat());
		for (const action of route.actions) {
			const at = named(route, action);
			const met = { anywhere: false, shown: false };
			for (const [place, pages] of looks) {
				const forms = [...pages].flatMap(([actor, all]) => {
					const form = all.find((one) => one.action === action);
					return form ? [[actor, form] as const] : [];
				});
				const isShown = forms.length > 0;
				const own = new Set([...pages].filter(([, all]) => all.length).map(([actor]) => actor));
				const here = forms.map(([, form]) => form);
				// a form nobody is shown here: as elsewhere on the route, else as it is written
				const elsewhere = everywhere.filter((form) => form.action === action);
				const known = [here, elsewhere, everywhere].find((some) => some.length) ?? [];
				const names = known.flatMap((form) => form.names);
				found.push({
					...{ route, action, at, place, own },
					shown: new Map(forms.map(([actor, { entries }]) => [actor, fillIn(entries, filled[at] ?? {})])),
					names: unique(names.length ? names : namesWritten(folder, route)),
					boxes: unique(here.flatMap((form) => form.boxes)),
					first: !met.anywhere || (isShown && !met.shown)
				});
				met.anywhere = true;
				met.shown ||= isShown;
			}
		}
	}
	return found;
}
