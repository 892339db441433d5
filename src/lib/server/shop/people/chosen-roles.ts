import { shopPeople, type Lang } from '$lib/i18n';
import { ROLES, type Role } from '$lib/records';

/** More boxes than the form has; what is beyond was never offered. */
const MOST = ROLES.length;

/** The roles ticked in a form, and what is wrong with them, in words. What is no role counts as not ticked. */
export const chosenRoles = (form: FormData, lang: Lang): { roles: Role[]; problem: string | null } => {
	const ticked = form.getAll('roles').slice(0, MOST);
	const roles = ROLES.filter((role) => ticked.includes(role));
	if (roles.length === 0) return { roles, problem: shopPeople[lang].rolesMissing };
	if (roles.includes('auditor') && roles.length > 1) return { roles, problem: shopPeople[lang].auditorOnly };
	return { roles, problem: null };
};
