import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { REFUSALS } from '$lib/records';

/** Every file of a folder but those that only list the codes. */
const textOf = (folder: string): string =>
	readdirSync(folder, { recursive: true, encoding: 'utf8' })
		.filter((name) => name.endsWith('.ts') && !/(^|\/)refusals?(\.test)?\.ts$/.test(name))
		.map((name) => readFileSync(join(folder, name), 'utf8'))
		.join('\n');

const notIn = (text: string) => REFUSALS.filter((code) => !text.includes(`'${code}'`));

test('every refusal there is can happen', () => {
	expect(notIn(textOf('src/lib/records'))).toEqual([]);
});

test('a test has seen every refusal', () => {
	expect(notIn(textOf('tests/behaviour/records'))).toEqual([]);
});
