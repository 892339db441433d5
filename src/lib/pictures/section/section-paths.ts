import type { BodyKind, Cut } from './cut';

/** One filled outline of a section. */
export type SectionPath = {
	readonly what: 'substrate' | 'film' | 'top-coat' | BodyKind;
	/** Path data for the `d` of an SVG path, in the units of `view`. */
	readonly d: string;
};

/** A section as vector outlines, back to front. */
export type SectionPaths = {
	/** Width and height of the drawing in its own units. */
	readonly view: readonly [width: number, height: number];
	/** How many times heights are stretched against lengths. */
	readonly stretched: number;
	readonly paths: readonly SectionPath[];
};

/** Units of the drawing: 40 to a millimetre across and 1 to a micrometre up, so heights are stretched 25 times. */
const ACROSS = 40;
const STRETCHED = 25;
const WIDTH = 300;
const HEIGHT = 200;
/** The mean of the substrate lies so far above the lower edge. */
const FLOOR = 70;

const point = (x: number, y: number) =>
	`${(WIDTH / 2 + x * ACROSS).toFixed(1)} ${Math.max(0, HEIGHT - FLOOR - y).toFixed(1)}`;

/** Turns a cut into paths. */
export function sectionPaths({ x, ground, top, coat, bodies }: Cut): SectionPaths {
	const line = (heights: Float32Array) => [...heights].map((y, k) => point(x[k]!, y)).join('L');
	const down = (heights: Float32Array) => `M${line(heights)}L${point(4, -FLOOR)}L${point(-4, -FLOOR)}Z`;
	// what lies under the film is drawn over it, so that the film hides nothing
	const paths: SectionPath[] = [{ what: coat ? 'top-coat' : 'film', d: down(top) }];
	if (coat) paths.push({ what: 'film', d: down(coat) });
	paths.push({ what: 'substrate', d: down(ground) });
	for (const { kind, outline } of bodies) {
		paths.push({ what: kind, d: `M${outline.map(([px, py]) => point(px, py)).join('L')}Z` });
	}
	return { view: [WIDTH, HEIGHT], stretched: STRETCHED, paths };
}
