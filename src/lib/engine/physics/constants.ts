/** J/(mol·K), exact since the SI of 2019. */
export const GAS_CONSTANT = 8.31446261815324;
/** W/(m²·K⁴), from the exact constants of the SI of 2019. */
export const STEFAN_BOLTZMANN = 5.670374419e-8;
/** Standard atmosphere, Pa. */
export const ATMOSPHERE = 101_325;
/** Specific heats of air at constant pressure over constant volume, near shop temperatures. */
export const AIR_HEAT_RATIO = 1.4;
/** J/(kg·K) of dry air: the gas constant over 28.965 g/mol. */
export const AIR_GAS_CONSTANT = 287.05;
/** kg/mol. */
export const WATER_MOLAR_MASS = 0.018015268;
