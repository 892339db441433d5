import { sha256 } from '$lib/records';
import { published } from './published';

export default published('fips-180-4', 'SHA-256 of the example messages', {
	of: ['record'],
	unit: 'hexadecimal',
	read: 'memory',
	within: { absolute: 0, because: 'a hash is right or wrong' },
	rows: [
		{
			where: 'one-block message "abc"',
			expected: 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
			actual: () => sha256('abc')
		},
		{
			where: 'two-block message',
			expected: '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
			actual: () => sha256('abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq')
		}
	]
});
