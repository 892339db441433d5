import { expect, test } from 'vitest';
import { METRIC, US } from '$lib/engine';
import { LESSONS, lessonView } from '$lib/lessons';
import { demoShop } from './demo-shop';

const limits = LESSONS.find(({ slug }) => slug === 'heat-limits')!;
const abs = (shop = demoShop, units = METRIC) =>
	lessonView(limits, shop, { lang: 'en', units }).values.cap!.find(({ id }) => id === 'cap.abs')!;

test('a list shows every value of the shop that its start names, in the reader’s units', () => {
	expect(lessonView(limits, demoShop, { lang: 'en', units: METRIC }).values.cap!.length).toBeGreaterThan(20);
	expect(abs().value).toMatch(/^60\s°C$/);
	expect(abs(demoShop, US).value).toMatch(/^140\s°F$/);
});

test('a value that the lead set shows as set, and from whom', () => {
	const shop = { ...demoShop, settings: { 'cap.abs': { from: '2026-01-01', value: 323.15 } } };
	expect(abs(shop).value).toMatch(/^50\s°C$/);
	expect(abs(shop).provenance).not.toEqual(abs().provenance);
});
