import { resolve } from 'node:path';
import type { Lang } from '$lib/i18n';
import type { App } from '../app';
import { shopName } from '../shop-name';

/** What the shop's first page says of itself, and where its data lie. */
export const shopOverview = (app: App, lang: Lang) => {
	const { state, head } = app.journal;
	return {
		name: shopName(app, lang),
		timeZone: state.shop.founded?.timeZone ?? '',
		foundedOn: state.shop.founded?.on ?? null,
		folder: resolve(app.settings.dataFolder),
		entries: head.count,
		lastHash: head.hash,
		hasSheets: state.shop.sheets.size > 0
	};
};
