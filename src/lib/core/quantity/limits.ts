/**
 * Widest values that the laws accept, so that a slip of the keyboard is an error and not a plan.
 * They bound what a mold shop can mean, not what nature allows; common practice, no source.
 */
export const MAX_MASS_G = 1_000_000;
export const MAX_VOLUME_ML = 1_000_000;
export const MAX_AREA_CM2 = 1_000_000;
export const MAX_LENGTH_MM = 10_000;
export const MAX_TIME_S = 60 * 86_400;
export const DENSITY_G_PER_ML = { min: 0.05, max: 20 } as const;
export const PARTS = { min: 0.001, max: 100_000 } as const;
