declare module 'psychrolib' {
	const psychrolib: {
		readonly SI: number;
		SetUnitSystem(system: number): void;
		/** °C and relative humidity 0–1 to °C. */
		GetTDewPointFromRelHum(dryBulb: number, humidity: number): number;
		/** °C and °C to relative humidity 0–1. */
		GetRelHumFromTDewPoint(dryBulb: number, dewPoint: number): number;
		/** °C, °C and Pa to relative humidity 0–1. */
		GetRelHumFromTWetBulb(dryBulb: number, wetBulb: number, pressure: number): number;
		/** °C, relative humidity 0–1 and Pa to kg of water per kg of dry air. */
		GetHumRatioFromRelHum(dryBulb: number, humidity: number, pressure: number): number;
		/** °C, kg/kg and Pa to kg of moist air per m³. */
		GetMoistAirDensity(dryBulb: number, ratio: number, pressure: number): number;
		/** °C and Pa to °C. */
		GetTDewPointFromVapPres(dryBulb: number, vapour: number): number;
		/** °C to Pa. */
		GetSatVapPres(dryBulb: number): number;
	};
	export default psychrolib;
}
