/** What was typed into a field of a form; an upload or a missing field counts as nothing. */
export const typed = (form: FormData, name: string): string => {
	const value = form.get(name);
	return typeof value === 'string' ? value : '';
};
