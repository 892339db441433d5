import { shell, type Lang } from '$lib/i18n';

type Screen = keyof (typeof shell)['en']['screen'];

/** Every screen of the header in order, with the roles it is shown to; 'anyone' includes a visitor. */
const SHOWN_TO: Record<Screen, readonly string[]> = {
	today: ['trainee', 'supervisor', 'lead'],
	lessons: ['trainee', 'supervisor', 'lead'],
	practice: ['trainee', 'supervisor', 'lead'],
	proving: ['trainee', 'supervisor', 'lead'],
	'bench-card': ['trainee', 'supervisor', 'lead'],
	rules: ['anyone'],
	crew: ['supervisor', 'lead'],
	incidents: ['supervisor', 'lead', 'auditor'],
	record: ['lead', 'auditor'],
	shop: ['lead', 'auditor']
};

/** The screens to offer to somebody with these roles. What a page permits is decided by the server, not here. */
export function screensFor(roles: readonly string[], lang: Lang): { href: string; label: string }[] {
	const who = [...roles, 'anyone'];
	return (Object.keys(SHOWN_TO) as Screen[])
		.filter((screen) => SHOWN_TO[screen].some((role) => who.includes(role)))
		.map((screen) => ({ href: `/${lang}/${screen}`, label: shell[lang].screen[screen] }));
}
