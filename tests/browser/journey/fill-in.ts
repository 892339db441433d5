import type { Page } from '@playwright/test';
import { field, isFieldId, METRIC, US, type Answer, type FieldId } from '$lib/engine';
import type { Lang } from '$lib/i18n';
import { answerText } from '$lib/paper';

/** The field ids of the form on the page, in their order. */
export const askedOn = async (page: Page): Promise<FieldId[]> => {
	const names = await page
		.locator('form input:not([type=hidden]), form ol input[type=hidden]')
		.evaluateAll((inputs) => inputs.map((input) => input.getAttribute('name') ?? ''));
	return [...new Set(names)].filter(isFieldId);
};

/** Puts a list in order with its Up buttons, as a person does; without JavaScript each press is a round trip. */
async function putInOrder(page: Page, id: FieldId, wanted: readonly string[]) {
	const now = () =>
		page
			.locator(`form ol input[name="${id}"]`)
			.evaluateAll((inputs) => inputs.map((input) => input.getAttribute('value') ?? ''));
	for (let place = 0; place < wanted.length; place += 1)
		for (let order = await now(); order[place] !== wanted[place];) {
			await page.locator(`button[value="${id}:${wanted[place]}:up"]`).click();
			const before = order.join();
			for (let tries = 0; tries < 100 && order.join() === before; tries += 1) {
				await page.waitForTimeout(20);
				order = await now().catch(() => order);
			}
			if (order.join() === before) throw new Error(`${id} does not move`);
		}
}

/** Fills in one field of the form on the page. Quantities are typed with the unit this reader is shown. */
export async function fillIn(page: Page, id: FieldId, answer: Answer, lang: Lang) {
	const units = lang === 'en' ? US : METRIC;
	const boxes = page.locator(`form input[name="${id}"]`);
	switch (answer.kind) {
		case 'quantity':
			return boxes.fill(answerText(id, { ...answer, typed: '' }, { lang, units }));
		case 'choice':
			return page.locator(`form input[name="${id}"][value="${answer.option}"]`).check();
		case 'choices': {
			const spec = field(id);
			for (const option of spec.kind === 'choices' ? Object.keys(spec.options) : [])
				await page
					.locator(`form input[name="${id}"][value="${option}"]`)
					.setChecked(answer.options.includes(option));
			return;
		}
		case 'order':
			return putInOrder(page, id, answer.options);
	}
}
