/** What heats, how it heats, and from where to where: the inputs of the heat-up formulas. */
export const BODY = {
	density: 'density',
	heat: 'specific-heat',
	depth: 'length',
	heatTransfer: 'heat-transfer'
} as const;
export const PATH = { start: 'temperature', air: 'temperature', target: 'temperature' } as const;

export const TEMPERATURE: [number, number] = [200, 1200];
export const BODY_RANGE: { [K in keyof typeof BODY]: [number, number] } = {
	density: [500, 20_000],
	heat: [100, 5000],
	depth: [1e-6, 0.5],
	heatTransfer: [0.1, 10_000]
};
export const PATH_RANGE = { start: TEMPERATURE, air: TEMPERATURE, target: TEMPERATURE };

type Path = { start: number; air: number; target: number };

/** Natural logarithm of how much closer the part has come to the air. The air itself is never reached. */
export function approach({ start, air, target }: Path) {
	const ratio = (air - start) / (air - target);
	if (!(ratio >= 1 && ratio < Infinity))
		throw new RangeError(`heat-up: ${target} K does not lie between ${start} K and ${air} K`);
	return Math.log(ratio);
}
