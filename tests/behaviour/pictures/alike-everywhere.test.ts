import { expect, test } from 'vitest';
import { filesUnder, textOf } from '../../house/files';

/** What engines may answer differently in the last digit (ECMA-262 leaves their precision to them). */
const OWN_PRECISION = /Math\.(?!abs|ceil|floor|imul|max|min|round|sqrt)\w+|\*\*/;

test('pictures are drawn with arithmetic that is the same on every machine', () => {
	const files = filesUnder('src/lib/pictures').filter((path) => path.endsWith('.ts'));
	expect(files.length).toBeGreaterThan(60);
	const code = (path: string) => textOf(path).replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
	expect(files.filter((path) => OWN_PRECISION.test(code(path)))).toEqual([]);
	expect(OWN_PRECISION.test('Math.sin(1)')).toBe(true);
});
