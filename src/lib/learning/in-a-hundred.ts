import type { Text } from '$lib/engine';

/** A chance as people out of a hundred, rounded to whole ones: easier to picture than a decimal, and no falser. */
export function inAHundred(chance: number): Text {
	const people = Math.round(chance * 100);
	if (people < 1) return { en: 'fewer than 1 in 100', es: 'menos de 1 de cada 100' };
	if (people > 99) return { en: 'more than 99 in 100', es: 'más de 99 de cada 100' };
	return { en: `about ${people} in 100`, es: `cerca de ${people} de cada 100` };
}
