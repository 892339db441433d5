import { Window } from 'happy-dom';
import type { Page } from '@playwright/test';

export type Rows = ReadonlyMap<string, string>;

/** A ticket as a person sees it: rows of the head, then of each section by its title. */
export type TicketRows = {
	readonly number: string;
	readonly head: Rows;
	readonly sections: ReadonlyMap<string, Rows>;
};

/** The job ticket on the page. */
export async function ticketRows(page: Page): Promise<TicketRows> {
	await page.locator('article').first().waitFor();
	await page.waitForLoadState('domcontentloaded');
	const { document } = new Window();
	document.body.innerHTML = await page.content();
	const sheet = document.querySelector('article');
	if (!sheet) throw new Error('no ticket on this page');
	const text = (node: { textContent: string | null } | null) =>
		(node?.textContent ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();
	const rowsOf = (list: ReturnType<typeof sheet.querySelector>) =>
		new Map(
			[...(list?.querySelectorAll('dt') ?? [])].map((label) => [text(label), text(label.nextElementSibling)])
		);
	const head = rowsOf([...sheet.children].find(({ tagName }) => tagName === 'DL') ?? null);
	const sections = new Map(
		[...sheet.querySelectorAll('details')].map((one) => [
			text(one.querySelector('summary')),
			rowsOf(one.querySelector('dl'))
		])
	);
	return { number: text(sheet.querySelector('.number')), head, sections };
}
