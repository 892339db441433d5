import type { Reader } from '$lib/paper';
import type { App } from '../../app';
import { shopInForce } from '../../shop-in-force';
import { amountEntries } from './value-form';
import { isGear, isShopValue } from './value-rooms';
import { valueView } from './value-view';

/**
 * One shop value with the entries of its form.
 * @returns 'gear' for a line of the hazard assessment, which is set with the others of its task; undefined for no value
 */
export const valuePage = (app: App, id: string, reader: Reader) => {
	if (!isShopValue(id)) return undefined;
	if (isGear(id)) return 'gear';
	const { shop } = shopInForce(app);
	return { id, view: valueView(app, id, reader, shop), entries: amountEntries(id, reader, shop) };
};
