/**
 * The ids of the hint and error that FieldFrame writes for a field, for its aria-describedby. A finding is not among
 * them: read out on every focus it would bury the question.
 */
export function describedBy(field: {
	readonly id: string;
	readonly hint?: string;
	readonly error?: string;
}): string | undefined {
	const parts = [field.hint && `${field.id}-hint`, field.error && `${field.id}-error`];
	return parts.filter(Boolean).join(' ') || undefined;
}
