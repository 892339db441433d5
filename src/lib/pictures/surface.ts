import type { Frame } from './paint/frame';
import { grain, noise, salted } from './paint/noise';

/** A place on the panel, mm from its upper left corner. */
export type Place = { readonly x: number; readonly y: number };

/** Colour as linear light, each part 0 to 1. */
export type Colour = readonly [red: number, green: number, blue: number];

/** A piece of coated surface as seen through a frame, one value per pixel. */
export type Surface = {
	readonly frame: Frame;
	readonly seed: number;
	/** Where one specimen of the defect lies: loupe and section go there. */
	readonly focus: Place;
	/** The film's own colour, as the defect finds it. */
	readonly film: Colour;
	/** Above or below the nominal film, µm. */
	readonly height: Float32Array;
	/** Linear red, green and blue, three values per pixel. */
	readonly colour: Float32Array;
	/** Sheen, 0 (dead matt) to 1 (mirror). */
	readonly gloss: Float32Array;
};

/** Nominal film, µm: a drawing aid in the middle of thin films. */
export const FILM = 35;

/** Invented demo colours, mid-toned so that pale haze and dark holes both show. */
const COLOURS: readonly Colour[] = [
	[0.06, 0.12, 0.19],
	[0.07, 0.15, 0.11],
	[0.19, 0.14, 0.1]
];

/** A sound film: nearly flat, of one colour and one sheen. */
export function soundFilm(frame: Frame, seed: number, focus: Place, gloss: number): Surface {
	const film = COLOURS[Math.floor(grain(seed, 3) * COLOURS.length)]!;
	const height = noise(frame, salted(seed, 11), 6);
	const texture = noise(frame, salted(seed, 12), 0.12);
	// a matt film scatters because flatting agent roughens it; the same grains show under the loupe
	const rough = 0.2 + (1 - gloss) * 1.2;
	for (let i = 0; i < height.length; i++) height[i] = height[i]! * 0.5 + texture[i]! * rough;
	const colour = new Float32Array(height.length * 3);
	for (let i = 0; i < colour.length; i += 3) {
		colour[i] = film[0];
		colour[i + 1] = film[1];
		colour[i + 2] = film[2];
	}
	return { frame, seed, focus, film, height, colour, gloss: new Float32Array(height.length).fill(gloss) };
}
