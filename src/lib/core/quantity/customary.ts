/**
 * US customary units in the core's units. The definitions are exact: NIST SP 811 (2008), appendix B;
 * the inch, the pound and the gallon of 231 cubic inches fix all the others.
 */
export const MM_PER_IN = 25.4;
export const MM_PER_FT = 12 * MM_PER_IN;
export const CM2_PER_IN2 = 6.4516;
export const CM2_PER_FT2 = 144 * CM2_PER_IN2;
export const ML_PER_US_GAL = 3785.411784;
export const ML_PER_US_FL_OZ = ML_PER_US_GAL / 128;
export const G_PER_LB = 453.59237;
export const G_PER_OZ = G_PER_LB / 16;
export const G_PER_GRAIN = G_PER_LB / 7000;
/** The pound-force takes standard gravity, 9.80665 m/s² exactly. */
export const N_PER_LBF = (G_PER_LB / 1000) * 9.80665;
export const PA_PER_PSI = N_PER_LBF / (MM_PER_IN / 1000) ** 2;
export const M3_PER_FT3 = (MM_PER_FT / 1000) ** 3;

/** @returns the temperature in degrees Fahrenheit (not for temperature differences) */
export function fahrenheit(temperatureC: number): number {
	return temperatureC * 1.8 + 32;
}
