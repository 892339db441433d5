import { refusalText, shopPeople, type Lang } from '$lib/i18n';
import { ROLES, type Role } from '$lib/records';

const isRole = (value: FormDataEntryValue): boolean => ROLES.some((role) => role === value);

/** The roles ticked in a form, and what is wrong with them, in words. */
export const chosenRoles = (form: FormData, lang: Lang): { roles: Role[]; problem: string | null } => {
	const ticked = form.getAll('roles');
	const roles = ROLES.filter((role) => ticked.includes(role));
	if (!ticked.every(isRole)) return { roles, problem: refusalText({ code: 'malformed' }, lang) };
	if (roles.length === 0) return { roles, problem: shopPeople[lang].rolesMissing };
	if (roles.includes('auditor') && roles.length > 1) return { roles, problem: shopPeople[lang].auditorOnly };
	return { roles, problem: null };
};
