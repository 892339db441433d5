import { crc32, deflateSync } from 'node:zlib';
import type { Raster } from '$lib/pictures';

const SIGNATURE = Uint8Array.of(137, 80, 78, 71, 13, 10, 26, 10);

/** Eight bits a channel, red, green and blue (colour type 2), no interlace. */
const FORMAT = [8, 2, 0, 0, 0];

/** Row filter 1: each byte less the one a pixel before it. Smooth films turn into rows of nearly nothing. */
const SUB = 1;

function chunk(type: string, data: Uint8Array): Buffer {
	const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
	const frame = Buffer.alloc(8);
	frame.writeUInt32BE(data.length, 0);
	frame.writeUInt32BE(crc32(body), 4);
	return Buffer.concat([frame.subarray(0, 4), body, frame.subarray(4)]);
}

/**
 * A raster as a PNG file, opaque.
 *
 * Source: Portable Network Graphics specification, third edition, sections 5 (chunks), 9 (filters) and 11.2 (from memory).
 */
export function png({ width, height, rgba }: Raster): Uint8Array<ArrayBuffer> {
	const header = Buffer.alloc(13);
	header.writeUInt32BE(width, 0);
	header.writeUInt32BE(height, 4);
	header.set(FORMAT, 8);
	const rows = Buffer.alloc(height * (width * 3 + 1));
	for (let r = 0, at = 0; r < height; r++) {
		rows[at++] = SUB;
		for (let c = 0; c < width; c++) {
			const k = (r * width + c) * 4;
			for (let channel = 0; channel < 3; channel++) {
				const before = c > 0 ? rgba[k - 4 + channel]! : 0;
				rows[at++] = rgba[k + channel]! - before;
			}
		}
	}
	return Uint8Array.from(
		Buffer.concat([
			SIGNATURE,
			chunk('IHDR', header),
			chunk('IDAT', deflateSync(rows, { level: 9 })),
			chunk('IEND', Buffer.alloc(0))
		])
	);
}
