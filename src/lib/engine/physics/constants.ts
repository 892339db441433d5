/** J/(mol·K), exact since the SI of 2019. */
export const GAS_CONSTANT = 8.31446261815324;
/** W/(m²·K⁴), from the exact constants of the SI of 2019. */
export const STEFAN_BOLTZMANN = 5.670374419e-8;
/** Standard atmosphere, Pa. */
export const ATMOSPHERE = 101_325;
