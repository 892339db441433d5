import { describe, expect, test } from 'vitest';
import { LOOK_ALIKES, type PictureId } from '../../../src/lib/pictures';
import { relativeDistance } from './average-distance';

/** In plain view look-alikes are nearer to each other than half way to a sound film ... */
const A = 0.5;
/** ... and in the view that tells them apart they are further than this. */
const B = 0.7;

describe('look-alikes', () => {
	test('are at least three pairs, each of two defects', () => {
		expect(LOOK_ALIKES.length).toBeGreaterThanOrEqual(3);
		expect(LOOK_ALIKES.filter(({ pair: [one, other] }) => one === other)).toEqual([]);
	});

	test.each(LOOK_ALIKES.map(({ pair, toldApartIn }) => [...pair, toldApartIn] as const))(
		'%s and %s look alike in plain view and differ in %s',
		(one, other, view) => {
			const plain = relativeDistance([one, other], 'plain');
			const closer = relativeDistance([one, other], view);
			console.log(`${one} / ${other}: plain ${plain.toFixed(2)}, ${view} ${closer.toFixed(2)}`);
			expect(plain).toBeLessThan(A);
			expect(closer).toBeGreaterThan(B);
		}
	);

	test('defects nobody confuses are far apart in plain view: the distance can tell', () => {
		const apart: [PictureId, PictureId][] = [
			['runs', 'flaking'],
			['dry-spray', 'pinholes'],
			['mottling', 'grit-inclusion']
		];
		expect(apart.map((pair) => relativeDistance(pair, 'plain')).filter((far) => far < B)).toEqual([]);
	});
});
