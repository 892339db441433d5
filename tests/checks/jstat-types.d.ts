declare module 'jstat' {
	export const jStat: {
		readonly studentt: { inv(p: number, degrees: number): number };
		readonly beta: { pdf(x: number, alpha: number, beta: number): number };
		readonly normal: { pdf(x: number, mean: number, deviation: number): number };
		/** Of a sample where `sample` is true. */
		stdev(values: readonly number[], sample: boolean): number;
		mean(values: readonly number[]): number;
	};
}
