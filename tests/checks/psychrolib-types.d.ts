declare module 'psychrolib' {
	const psychrolib: {
		readonly SI: number;
		SetUnitSystem(system: number): void;
		/** °C and relative humidity 0–1 to °C. */
		GetTDewPointFromRelHum(dryBulb: number, humidity: number): number;
		/** °C to Pa. */
		GetSatVapPres(dryBulb: number): number;
	};
	export default psychrolib;
}
