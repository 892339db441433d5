import { Window } from 'happy-dom';

export type Entries = readonly (readonly [name: string, value: string])[];

/** A form of a page, as it would be sent without touching anything but the button. */
export type PageForm = {
	/** Form action it is sent to; 'default' where it names none. */
	readonly action: string;
	/** Query it is sent with, '?' included. */
	readonly query: string;
	/** What stands in it. */
	readonly entries: Entries;
	/** Every name in it, those of boxes not ticked and of buttons too. */
	readonly names: readonly string[];
	/** Those of several boxes to tick. */
	readonly boxes: readonly string[];
};

type Control = {
	readonly name: string;
	readonly type: string;
	readonly value: string;
	readonly checked: boolean;
	readonly tagName: string;
	readonly formAction: string | null;
};

// one for all pages: each window keeps its memory
const { document } = new Window();

/** Where a form goes, if it goes to the page it stands on. */
function targetOf(attribute: string, address: URL): { action: string; query: string } | null {
	const target = new URL(attribute, address);
	if (target.pathname !== address.pathname) return null;
	const named = [...target.searchParams.keys()].find((key) => key.startsWith('/'));
	return { action: named?.slice(1) ?? 'default', query: target.search };
}

const isSent = ({ type, tagName, checked }: Control) =>
	tagName !== 'BUTTON' && type !== 'file' && (!['checkbox', 'radio'].includes(type) || checked);

const boxesOf = (controls: readonly Control[]): string[] => {
	const boxes = controls.filter(({ type }) => type === 'checkbox').map(({ name }) => name);
	return [...new Set(boxes)].filter((name) => boxes.filter((one) => one === name).length > 1);
};

// happy-dom answers with another option than the selected one
const chosenIn = (select: {
	querySelector(selectors: string): { getAttribute(name: string): string | null } | null;
}) =>
	(select.querySelector('option[selected]') ?? select.querySelector('option'))?.getAttribute('value') ?? '';

/** Every form on a page that posts to that page, once for each form action it can be sent to. */
export function formsOn(html: string, address: URL): PageForm[] {
	document.body.innerHTML = html
		.replace(/^[\s\S]*?<body[^>]*>/, '')
		.replace(/<script[\s\S]*?<\/script>/g, '');
	return [...document.querySelectorAll('form')]
		.filter((form) => form.getAttribute('method')?.toUpperCase() === 'POST')
		.flatMap((form) => {
			const controls: Control[] = [...form.querySelectorAll('input, select, textarea, button')].map((one) => {
				const control = one as unknown as HTMLInputElement;
				return {
					name: one.getAttribute('name') ?? '',
					type: one.getAttribute('type') ?? '',
					value: one.tagName === 'SELECT' ? chosenIn(one) : control.value,
					checked: control.checked,
					tagName: one.tagName,
					formAction: one.getAttribute('formaction')
				};
			});
			const named = controls.filter(({ name }) => name);
			const goesTo = [
				form.getAttribute('action') ?? '',
				...controls.flatMap(({ formAction }) => formAction ?? [])
			];
			return [...new Set(goesTo)].flatMap((attribute) => {
				// an empty action is the page itself, its query included
				const target = targetOf(attribute || address.search || '', address);
				return target
					? {
							...target,
							entries: named.filter(isSent).map(({ name, value }) => [name, value] as const),
							names: [...new Set(named.map(({ name }) => name))],
							boxes: boxesOf(named)
						}
					: [];
			});
		});
}
