import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Actor, Actors } from './actors';
import type { FilledIn } from './filled-in';
import { formsOn, type PageForm } from './page-form';
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
	readonly shown: ReadonlyMap<Actor, PageForm['entries']>;
};

const named = ({ id }: Route, action: string) => `${id.replace('/[lang=lang]/', '')} ?/${action}`;

/** Names that stand in the components of a route, for forms nobody is shown as things are. */
function namesWritten(folder: string, { id }: Route): string[] {
	const at = join(folder, id);
	const components = readdirSync(at).filter((file) => file.endsWith('.svelte'));
	const found = components.flatMap((file) => [
		...readFileSync(join(at, file), 'utf8').matchAll(/\bname(?:="|: ')([\w.-]+)["']/g)
	]);
	return [...new Set(found.map(([, name]) => name!))];
}

/** Puts what a person would type over what stands in a form. */
function fillIn(entries: PageForm['entries'], filled: FilledIn): PageForm['entries'] {
	const left = entries.filter(([name]) => !(name in filled));
	return [...left, ...Object.entries(filled)];
}

/** Looks at every page with a form action, as everybody, and notes the forms they are shown. */
export async function survey(
	{ routes, folder }: { routes: readonly Route[]; folder: string },
	{ actors, stock, filled }: { actors: Actors; stock: Stock; filled: Readonly<Record<string, FilledIn>> },
	baseURL: string
): Promise<Action[]> {
	const found: Action[] = [];
	const names = new Map<string, Set<string>>();
	for (const route of routes.filter(({ actions }) => actions.length))
		for (const place of placesOf(route, stock)) {
			const pages = new Map<Actor, PageForm[]>();
			for (const actor of Object.values(actors)) {
				const path = pathOf(route, place, actor.lang);
				const page = await actor.browser.get(path, { maxRedirects: 0 });
				if (page.status() === 200) pages.set(actor, formsOn(await page.text(), new URL(path, baseURL)));
			}
			for (const action of route.actions) {
				const at = named(route, action);
				const known = names.get(at) ?? new Set<string>();
				names.set(at, known);
				const shown = new Map<Actor, PageForm['entries']>();
				for (const [actor, forms] of pages) {
					const form = forms.find((one) => one.action === action);
					if (!form) continue;
					form.names.forEach((name) => known.add(name));
					shown.set(actor, fillIn(form.entries, filled[at] ?? {}));
				}
				found.push({ route, action, at, place, shown, names: [] });
			}
		}
	return found.map((one) => {
		const seen = [...(names.get(one.at) ?? [])];
		return { ...one, names: seen.length ? seen : namesWritten(folder, one.route) };
	});
}
