import { expect, it } from 'vitest';
import { crewView } from '$lib/server/standing/crew-view';
import { forget } from '$lib/server/forget';
import {
	LEAD,
	makeReady,
	makeSigned,
	OTHER,
	passPractical,
	TRAINEE,
	workedShop,
	clearSafety
} from './worked-shop';

it('lists everybody who works here by name, whatever they are signed for', async () => {
	const shop = await workedShop();
	const { app } = shop;
	const names = () => crewView(app, 'en').map(({ name }) => name);
	expect(names()).toEqual(['Dale Whitcomb', 'Luis Paredes', 'Marta Quiroga', 'Nia Okoro']);
	await makeSigned(shop, TRAINEE);
	expect(names()).toEqual(['Dale Whitcomb', 'Luis Paredes', 'Marta Quiroga', 'Nia Okoro']);
	await forget(app, OTHER, LEAD);
	expect(names()).toEqual(['Dale Whitcomb', 'Marta Quiroga', 'Nia Okoro']);
});

it('says who waits for a practical and who for a signature, with the way there', async () => {
	const { app } = await workedShop();
	const waits = (id: string) => crewView(app, 'en').find((one) => one.id === id)?.waiting;
	expect(waits(TRAINEE)).toEqual([]);
	await clearSafety(app, TRAINEE);
	expect(waits(TRAINEE)?.map(({ what, competency }) => [what, competency])).toEqual([
		['practical', 'Intake'],
		['practical', 'Mixing'],
		['practical', 'Inspection']
	]);
	await passPractical(app, TRAINEE, 'mixing');
	expect(waits(TRAINEE)?.map(({ competency }) => competency)).toEqual(['Intake', 'Inspection']);
	await makeReady(app, OTHER);
	expect(waits(OTHER)).toContainEqual({
		what: 'signature',
		competency: 'Mixing',
		by: null,
		href: `/en/people/${OTHER}/sign-off/mixing`
	});
});
