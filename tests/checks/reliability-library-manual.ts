import { cleanRunFor } from '$lib/learning';
import { published } from './published';

export default published('reliability-library-manual', 'sample size when no failure is expected', {
	of: ['proving'],
	unit: 'trials',
	within: { absolute: 0, because: 'a whole number' },
	read: 'manual page of the Python library reliability, example of sample_size_no_failures',
	rows: [{ where: '99.9 % at 95 %', expected: 2995, actual: () => cleanRunFor(0.95, 0.999) }]
});
