/** The functions of `psychrolib` that are used as a second opinion; SI: °C, Pa, 0 to 1. */
declare module 'psychrolib' {
	interface Psychrolib {
		SI: number;
		SetUnitSystem(system: number): void;
		GetSatVapPres(temperatureC: number): number;
		GetVapPresFromRelHum(temperatureC: number, humidity: number): number;
		GetTDewPointFromRelHum(temperatureC: number, humidity: number): number;
		GetRelHumFromTDewPoint(temperatureC: number, dewPointC: number): number;
		GetTWetBulbFromRelHum(temperatureC: number, humidity: number, pressurePa: number): number;
		GetHumRatioFromRelHum(temperatureC: number, humidity: number, pressurePa: number): number;
		GetMoistAirVolume(temperatureC: number, humidityRatio: number, pressurePa: number): number;
	}
	const psychrolib: Psychrolib;
	export default psychrolib;
}
