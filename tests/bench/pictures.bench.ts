import { fileURLToPath } from 'node:url';
import { build, type Rolldown } from 'vite';
import { bench, describe } from 'vitest';
import type * as Pictures from '../../src/lib/pictures';

/* Built into one file as a browser gets it: what a test runner wraps around imports would be timed otherwise. */
const built = (await build({
	configFile: false,
	logLevel: 'silent',
	build: { ssr: fileURLToPath(new URL('../../src/lib/pictures/index.ts', import.meta.url)), write: false }
})) as Rolldown.RolldownOutput;
const source = `data:text/javascript,${encodeURIComponent(built.output[0].code)}`;
const { drawPicture, PICTURE_IDS } = (await import(/* @vite-ignore */ source)) as typeof Pictures;

/** One frame at 60 a second, on a machine four times slower than this one, ms. */
const SHARE_OF_FRAME = 1000 / 60 / 4;

const ROUNDS = 9;

/** The quickest of some rounds: what the drawing costs, not what else the machine was doing. */
function milliseconds(defect: Pictures.PictureId, view: Pictures.ShadedView): number {
	const rounds = Array.from({ length: ROUNDS }, (_, seed) => {
		const from = performance.now();
		drawPicture({ defect, severity: 3, seed }, view);
		return performance.now() - from;
	});
	return Math.min(...rounds);
}

const views = ['plain', 'raking', 'loupe'] as const;
for (const view of views) for (const defect of PICTURE_IDS) milliseconds(defect, view);
const timed = views.flatMap((view) =>
	PICTURE_IDS.map((defect) => ({ view, defect, ms: milliseconds(defect, view) }))
);
timed.sort((a, b) => b.ms - a.ms);

console.log(
	`240 × 160 pixels, severity 3; a frame of a CPU four times slower leaves ${SHARE_OF_FRAME.toFixed(2)} ms`
);
for (const { view, defect, ms } of timed.slice(0, 8)) {
	console.log(`${view} ${defect}: ${ms.toFixed(2)} ms, ${Math.round((ms / SHARE_OF_FRAME) * 100)} % of it`);
}
const middle = timed[Math.floor(timed.length / 2)]!.ms;
console.log(`median of ${timed.length} pictures: ${middle.toFixed(2)} ms`);
console.log(`within it: ${timed.filter(({ ms }) => ms < SHARE_OF_FRAME).length} of ${timed.length}`);

describe('a picture', () => {
	bench('sound film', () => {
		drawPicture({ defect: 'sound', severity: 1, seed: 1 }, 'plain');
	});
	bench('the dearest', () => {
		drawPicture({ defect: timed[0]!.defect, severity: 3, seed: 1 }, timed[0]!.view);
	});
});
