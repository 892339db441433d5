import { field, limits, si, type Answer, type Demand, type PlannedField } from '$lib/engine';

/** An answer that breaks this one demand; undefined where nothing a person can put in breaks it. */
export function breaking(
	{ field: id, offered }: Pick<PlannedField, 'field' | 'offered'>,
	{ expectation }: Demand
): Answer | undefined {
	const spec = field(id);
	const window = limits(expectation);
	if (window) {
		const beyond = (limit: number) => Math.max(Math.abs(limit) * 0.5, 1e-6) + window.amber;
		const value = Number.isFinite(window.max)
			? window.max + beyond(window.max)
			: window.min - beyond(window.min);
		return { kind: 'quantity', value: si(value), typed: '' };
	}
	if (spec.kind === 'quantity') return undefined;
	const options = Object.keys(offered ?? spec.options);
	switch (expectation.kind) {
		case 'one-of': {
			const option = options.find((one) => !expectation.options.includes(one));
			return option === undefined ? undefined : { kind: 'choice', option };
		}
		case 'none-of': {
			const [option] = expectation.options;
			if (option === undefined) return undefined;
			return spec.kind === 'choice' ? { kind: 'choice', option } : { kind: 'choices', options: [option] };
		}
		case 'all-of':
			if (expectation.options.length) return { kind: 'choices', options: expectation.options.slice(1) };
			return expectation.not?.length ? { kind: 'choices', options: [...expectation.not] } : undefined;
		case 'order': {
			const [pair] = expectation.before;
			if (!pair) return undefined;
			const rest = options.filter((one) => !pair.includes(one));
			return { kind: 'order', options: [pair[1], pair[0], ...rest] };
		}
		default:
			return undefined;
	}
}
