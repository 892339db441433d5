import type { Component } from 'svelte';
import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import { Caution, ErrorSummary, Finding, Provenance, Rack, SecretField, SetupField, ShopHead } from '$lib/ui';
import type { FieldView, FindingView } from '$lib/ui';

/** What a browser without JavaScript gets. */
const html = <Props extends Record<string, unknown>>(
	component: Component<Props>,
	options: { props: Props }
) =>
	// the library's own type asks for a choice of overload that a generic component cannot make
	render(component as unknown as Component, options).body;

const options = [
	{ id: 'wash', label: 'Degrease' },
	{ id: 'blast', label: 'Blast' },
	{ id: 'blow', label: 'Blow off' }
];
const field = <T extends Partial<FieldView>>(more: T) =>
	({ id: 'f', name: 'steps', label: 'Steps', ...more }) as FieldView;
const setUp = (view: FieldView) => html(SetupField, { props: { field: view, lang: 'en' } });

describe('a set-up field', () => {
	it('keeps what was typed and ties the error to the input', () => {
		const body = setUp(field({ kind: 'quantity', value: '5,9 bar <', units: ['bar'], error: 'Too high' }));
		expect(body).toContain('value="5,9 bar &lt;"');
		expect(body).toContain('aria-describedby="f-hint f-error"');
		expect(body).toContain('aria-invalid="true"');
		expect(body).toMatch(/id="f-error"[^]*Too high/);
	});

	it('says nothing of an error where there is none', () => {
		const body = setUp(field({ kind: 'quantity', value: '' }));
		expect(body).not.toMatch(/aria-invalid|aria-describedby|f-error/);
	});

	it('checks exactly what was chosen', () => {
		const body = setUp(field({ kind: 'choices', value: ['blast'], options }));
		expect(body.match(/<input[^>]*checked[^>]*>/g)).toHaveLength(1);
		expect(body).toMatch(/<input[^>]*value="blast"[^>]*checked/);
	});

	it('posts an order without JavaScript: hidden inputs in order, buttons that name the move', () => {
		const body = setUp(field({ kind: 'order', value: ['blow', 'wash', 'blast'], options }));
		expect([...body.matchAll(/type="hidden" name="steps" value="(\w+)"/g)].map((m) => m[1])).toEqual([
			'blow',
			'wash',
			'blast'
		]);
		expect(body).toMatch(/name="move" value="steps:wash:up"/);
		const off = [...body.matchAll(/value="(steps:\w+:\w+)"[^>]* disabled/g)].map((m) => m[1]);
		expect(off).toEqual(['steps:blow:up', 'steps:blast:down']);
	});

	it('never writes a secret back', () => {
		const secret = { id: 's', name: 'secret', label: 'PIN', value: '4711' };
		expect(html(SecretField, { props: { field: secret, lang: 'en' } })).not.toContain('4711');
	});
});

describe('what is told in words', () => {
	it('a panel says its finish and its standing', () => {
		const strip = { standing: 'refresher-due', date: '2026-11-20' } as const;
		const panels = [{ id: 'mixing', name: 'Mezcla', finish: 'signed', strip } as const];
		const body = html(Rack, { props: { panels, person: 'Ana', lang: 'es' } });
		expect(body).toContain('Firmado');
		expect(body).toContain('Repaso pendiente');
		expect(body).toMatch(/desde el 20 nov/);
	});

	it('a finding names value, window, rule and severity', () => {
		const finding: FindingView = {
			id: 'x',
			label: 'Blast pressure',
			zone: 'red',
			severity: 'safety-stop',
			received: '',
			expected: '2 to 3 bar',
			rule: { title: 'Pressure cap' },
			why: 'It bows.'
		};
		const body = html(Finding, { props: { finding, lang: 'en' } });
		for (const text of ['nothing entered', '2 to 3 bar', 'Pressure cap', 'Safety stop', 'Outside the window'])
			expect(body).toContain(text);
	});

	it('a number from memory says so, and arithmetic claims no reading', () => {
		const told = (origin: 'arithmetic' | 'handbook') =>
			html(Provenance, { props: { provenance: { origin, verification: 'memory' }, lang: 'en' } });
		expect(told('handbook')).toContain('from memory');
		expect(told('arithmetic')).not.toContain('memory');
	});

	it('an error summary counts and links only the entries with an error', () => {
		const errors = [
			{ id: 'a', label: 'Pressure', error: 'No unit' },
			{ id: 'b', label: 'Distance' }
		];
		const body = html(ErrorSummary, { props: { errors, lang: 'en' } });
		expect(body).toContain('1 entry to correct');
		expect(body).toContain('href="#a"');
		expect(body).not.toContain('#b');
	});
});

describe('a caution', () => {
	const props = {
		signal: 'danger',
		hazard: 'Mist',
		consequence: 'Kills',
		avoid: 'Leave',
		lang: 'es'
	} as const;
	it('bears the signal word of the language', () => {
		expect(html(Caution, { props })).toContain('PELIGRO');
	});
	it.each(['hazard', 'consequence', 'avoid'])('refuses to appear without its %s', (part) => {
		expect(() => html(Caution, { props: { ...props, [part]: ' ' } })).toThrow(part);
	});
	it('puts no alert symbol on a notice', () => {
		expect(html(Caution, { props: { ...props, signal: 'notice' } })).not.toContain('<svg');
		expect(html(Caution, { props })).toContain('<svg');
	});
});

describe('the head of the page', () => {
	const head = (roles: string[] | null, path = '/en/today') =>
		html(ShopHead, {
			props: {
				units: 'us',
				shop: 'Shop',
				who: roles && { name: 'Ana', roles },
				url: new URL(path, 'http://shop.test'),
				lang: 'en'
			}
		});
	const screens = (body: string) =>
		new Set(
			[...body.matchAll(/href="\/en\/(\w+)"(?! class="plain)/g)].map((m) => m[1]).filter((s) => s !== 'sign')
		);

	it('offers each role its screens and a visitor the rules only', () => {
		expect([...screens(head(null))]).toEqual(['rules']);
		expect([...screens(head(['trainee']))]).toEqual(['today', 'lessons', 'practice', 'proving', 'rules']);
		expect([...screens(head(['auditor']))]).toEqual(['rules', 'incidents', 'record', 'shop']);
		expect([...screens(head(['lead']))]).toContain('shop');
	});
	it('marks the screen one is on, also below it', () => {
		expect(head(['lead'], '/en/rules/pot-life')).toMatch(/href="\/en\/rules" aria-current="page"/);
		expect(head(['lead'], '/en/rulesets')).not.toContain('aria-current="page"');
	});
	it('switches language on the same page', () => {
		expect(head(['lead'], '/en/rules/pot-life')).toContain('href="/es/rules/pot-life"');
	});
});
