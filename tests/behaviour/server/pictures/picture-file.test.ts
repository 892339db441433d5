import { inflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { drawPicture } from '../../../../src/lib/pictures';
import { panelPng } from '../../../../src/lib/server/pictures/panel-png';
import { pictureFile } from '../../../../src/lib/server/pictures/picture-file';

/** Reads what a PNG file of this kind says, chunk by chunk, undoing row filters 0 and 1. */
function decode(file: Uint8Array) {
	const bytes = Buffer.from(file);
	expect([...bytes.subarray(1, 4)]).toEqual([...Buffer.from('PNG')]);
	const chunks = new Map<string, Buffer>();
	for (let at = 8; at < bytes.length;) {
		const length = bytes.readUInt32BE(at);
		chunks.set(bytes.toString('latin1', at + 4, at + 8), bytes.subarray(at + 8, at + 8 + length));
		at += 12 + length;
	}
	expect([...chunks.keys()]).toEqual(['IHDR', 'IDAT', 'IEND']);
	const [width, height] = [chunks.get('IHDR')!.readUInt32BE(0), chunks.get('IHDR')!.readUInt32BE(4)];
	const rows = inflateSync(chunks.get('IDAT')!);
	const rgb: number[] = [];
	for (let r = 0; r < height; r++) {
		const from = r * (width * 3 + 1);
		for (let k = 0; k < width * 3; k++) {
			const before = rows[from] === 1 && k >= 3 ? rgb[r * width * 3 + k - 3]! : 0;
			rgb.push((rows[from + 1 + k]! + before) & 255);
		}
	}
	return { width, height, rgb };
}

test('a PNG holds the pixels that were drawn', () => {
	const request = { defect: 'fisheyes', severity: 3, seed: 8 } as const;
	const { width, height, rgba } = drawPicture(request, 'plain');
	expect(decode(panelPng(request, 'plain'))).toEqual({
		width,
		height,
		rgb: [...rgba].filter((_, k) => k % 4 !== 3)
	});
});

const asked = (query: string) => pictureFile(new URLSearchParams(query));

test('an address gets its picture', () => {
	expect(asked('defect=runs&severity=2&seed=5&view=raking')?.type).toBe('image/png');
	expect(asked('defect=sound&severity=1&seed=5&view=plain')?.type).toBe('image/png');
	expect(asked('defect=runs&severity=2&seed=5&view=section')?.type).toBe('image/svg+xml');
});

test.each([
	'',
	'defect=toString&severity=2&seed=5&view=plain',
	'defect=runs&severity=4&seed=5&view=plain',
	'defect=runs&severity=02&seed=5&view=plain',
	'defect=runs&severity=2&seed=-1&view=plain',
	'defect=runs&severity=2&seed=1e9&view=plain',
	'defect=runs&severity=2&seed=5&view=side'
])('an address that asks for none there is gets nothing: %s', (query) => {
	expect(asked(query)).toBeUndefined();
});
