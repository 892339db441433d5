import type { Role, State } from '$lib/records';

/** Somebody of the demo shop. Invented, and their secrets are no secret: console and sign-in page show them. */
export interface DemoPerson {
	readonly id: string;
	readonly name: string;
	readonly roles: readonly Role[];
	readonly lang: 'en' | 'es';
	readonly secret: string;
}

/** The founding lead of the demo shop. */
export const demoLead = {
	id: 'demo-lead',
	name: 'Marta Quiroga',
	roles: ['lead', 'supervisor', 'trainee'],
	lang: 'en',
	secret: 'nine copper racks'
} as const satisfies DemoPerson;

/** Everyone of the demo shop, its lead first. */
export const demoPeople: readonly DemoPerson[] = [
	demoLead,
	{
		id: 'demo-supervisor',
		name: 'Dale Whitcomb',
		roles: ['supervisor'],
		lang: 'en',
		secret: 'grey masking tape'
	},
	{ id: 'demo-trainee', name: 'Nia Okoro', roles: ['trainee'], lang: 'en', secret: '2580' },
	{ id: 'demo-aprendiz', name: 'Luis Paredes', roles: ['trainee'], lang: 'es', secret: '7419' },
	{
		id: 'demo-auditor',
		name: 'Ingrid Solheim',
		roles: ['auditor'],
		lang: 'en',
		secret: 'red ledger page two'
	}
];

/** Whether this is the demo shop, where secrets may be shown. */
export const isDemo = (state: State): boolean => state.shop.founded?.demo ?? false;
