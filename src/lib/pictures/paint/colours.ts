import { FILM, type Colour, type Surface } from '../surface';
import { grain } from './noise';

/** Bare blasted metal. */
export const METAL: Colour = [0.42, 0.42, 0.41];
export const RUST: Colour = [0.42, 0.14, 0.03];
export const MILK: Colour = [0.62, 0.64, 0.66];
export const SHADOW: Colour = [0.015, 0.015, 0.018];

/** Mixes a colour into a pixel: 0 leaves it, 1 replaces it. */
export function tint({ colour }: Surface, i: number, to: Colour, amount: number): void {
	const k = i * 3;
	colour[k] = colour[k]! + (to[0] - colour[k]!) * amount;
	colour[k + 1] = colour[k + 1]! + (to[1] - colour[k + 1]!) * amount;
	colour[k + 2] = colour[k + 2]! + (to[2] - colour[k + 2]!) * amount;
}

/** Moves a pixel's sheen towards another. */
export function sheen({ gloss }: Surface, i: number, to: number, amount: number): void {
	gloss[i] = gloss[i]! + (to - gloss[i]!) * amount;
}

/** Facets that blasting left, mm: two sizes laid over one another, so that neither shows as a grid. */
const FACETS = [0.13, 0.09] as const;

/** Takes the film off a pixel, down to blasted metal: 0 leaves it, 1 is bare. */
export function bare(surface: Surface, i: number, amount: number): void {
	if (amount <= 0) return;
	const { width, left, top, pixel } = surface.frame;
	const row = Math.floor(i / width);
	const x = left + (i - row * width) * pixel;
	const y = top + row * pixel;
	const facet =
		grain(surface.seed, Math.floor(x / FACETS[0]), Math.floor(y / FACETS[0])) +
		grain(surface.seed, Math.floor((x + y / 2) / FACETS[1]), Math.floor((y - x / 2) / FACETS[1]) + 9000) -
		1;
	const sparkle = 1 + facet * 0.45;
	tint(surface, i, METAL, amount);
	for (let k = i * 3; k < i * 3 + 3; k++) surface.colour[k]! *= 1 + (sparkle - 1) * amount;
	sheen(surface, i, 0.25, amount);
	surface.height[i] = surface.height[i]! + (-FILM - surface.height[i]! + facet * 9) * amount;
}
