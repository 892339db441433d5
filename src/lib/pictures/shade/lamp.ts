import type { Surface } from '../surface';

/** How much light of two kinds a pixel sends to the eye: times its colour, and as the lamp's own. */
export type Lit = { colour: number; shine: number };

/**
 * Lights a pixel.
 *
 * @param i index of the pixel
 * @param sx slope along x, height over length
 * @param sy slope along y
 * @param x across the frame, 0 to 1
 * @param y down the frame, 0 to 1
 */
export type Lamp = (i: number, sx: number, sy: number, x: number, y: number, lit: Lit) => void;

/** A view chooses its lamp once it knows the surface, so that it can look for shadows first. */
export type LampFor = (surface: Surface) => Lamp;
