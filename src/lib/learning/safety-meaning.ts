import type { Text } from '$lib/engine';
import { cleanRunFor } from './clean-run';
import { inAHundred } from './in-a-hundred';
import { chanceOfClearing } from './safety-chance';
import type { Scheme } from './scheme';

/** The person the sentences call safe: one danger overlooked in a hundred jobs. */
const SAFE = 0.99;

/** The confidence at which the gate is compared with a run that would prove a safe person safe. */
const SURE = 0.95;

/** What the safety gate shows and what it does not, every number computed from the scheme in force. */
export function meaningOfSafetyGate({ safety }: Pick<Scheme, 'safety'>): Text[] {
	const { cleanRun, oneMissRun, unsafeRate, restarts } = safety;
	const tries = restarts + 1;
	const unlucky = inAHundred(1 - chanceOfClearing(safety, SAFE));
	const stillUnlucky = inAHundred(1 - chanceOfClearing(safety, SAFE, tries));
	const lucky = inAHundred(chanceOfClearing(safety, unsafeRate));
	const luckyInTheEnd = inAHundred(chanceOfClearing(safety, unsafeRate, tries));
	const missed = Math.round((1 - unsafeRate) * 100);
	const proof = cleanRunFor(SURE, SAFE);
	return [
		{
			en: `Cleared by ${cleanRun} drills without a safety stop, or ${oneMissRun} with exactly one. A second one stops proving until the safety lessons are done again.`,
			es: `Se pasa con ${cleanRun} ejercicios sin paro de seguridad, o con ${oneMissRun} y uno solo. El segundo detiene las pruebas hasta repetir las lecciones de seguridad.`
		},
		{
			en: `Of safe people, who overlook a danger in 1 of 100 jobs, ${unlucky.en} fail the first try by chance${tries > 1 ? `, and ${stillUnlucky.en} fail all ${tries} tries` : ''}.`,
			es: `De las personas seguras, que pasan por alto un peligro en 1 de cada 100 trabajos, ${unlucky.es} fallan el primer intento por azar${tries > 1 ? ` y ${stillUnlucky.es} fallan los ${tries} intentos` : ''}.`
		},
		{
			en: `Of people who overlook a danger in ${missed} of 100 jobs, ${lucky.en} clear the first try${tries > 1 ? `, and ${luckyInTheEnd.en} when they use all ${tries} tries` : ''}.`,
			es: `De las personas que pasan por alto un peligro en ${missed} de cada 100 trabajos, pasan ${lucky.es} al primer intento${tries > 1 ? ` y ${luckyInTheEnd.es} si usan los ${tries} intentos` : ''}.`
		},
		{
			en: `It does not prove anybody safe: to be 95 % sure of 99 in 100 would take ${proof} drills without a single miss. Watching people at work stays necessary.`,
			es: `No demuestra que alguien sea seguro: para tener un 95 % de certeza de 99 en 100 harían falta ${proof} ejercicios sin una sola falta. Sigue siendo necesario observar el trabajo.`
		}
	];
}
