import type { Text } from '$lib/engine';
import { inAHundred } from './in-a-hundred';
import { operatingCharacteristic } from './operating-characteristic';
import type { Scheme } from './scheme';
import { wilsonInterval } from './wilson';

const whole = (share: number) => Math.round(share * 100);

/** What a pass in one competency shows and what it does not, every number computed from the scheme in force. */
export function meaningOfPass({ sequential, retest }: Pick<Scheme, 'sequential' | 'retest'>): Text[] {
	const { p0, p1 } = sequential;
	const between = whole((p0 + p1) / 2);
	const passes = (rate: number) => operatingCharacteristic(sequential, rate).pass;
	const sittings = retest.most + 1;
	const lucky = inAHundred(passes(p0));
	const middling = inAHundred(passes(between / 100));
	const luckyInTheEnd = inAHundred(1 - (1 - passes(p0)) ** sittings);
	return [
		{
			en: `The answers fit someone who gets at least ${whole(p1)} of 100 simulated tickets right, and do not fit someone who gets ${whole(p0)} or fewer.`,
			es: `Las respuestas corresponden a quien resuelve bien al menos ${whole(p1)} de cada 100 órdenes simuladas, y no a quien resuelve bien ${whole(p0)} o menos.`
		},
		{
			en: `A pass does not prove ${whole(p1)} of 100. Of people who truly get ${between} of 100 right, ${middling.en} pass.`,
			es: `Aprobar no demuestra ${whole(p1)} de cada 100. De las personas que de verdad resuelven bien ${between} de cada 100, aprueban ${middling.es}.`
		},
		{
			en: `Of people who truly get ${whole(p0)} of 100 right, ${lucky.en} pass at the first try${sittings > 1 ? `, and ${luckyInTheEnd.en} when they use all ${sittings} tries` : ''}.`,
			es: `De las personas que de verdad resuelven bien ${whole(p0)} de cada 100, aprueban ${lucky.es} al primer intento${sittings > 1 ? ` y ${luckyInTheEnd.es} si usan los ${sittings} intentos` : ''}.`
		},
		{
			en: 'Tickets on a screen show decisions, not hands: those are shown by the practical.',
			es: 'Las órdenes en pantalla muestran decisiones, no las manos: esas se ven en la práctica.'
		}
	];
}

/** What a failed run in one competency shows and what it does not. */
export function meaningOfFail({ sequential }: Pick<Scheme, 'sequential'>): Text[] {
	const { p1 } = sequential;
	const unlucky = inAHundred(operatingCharacteristic(sequential, p1).fail);
	return [
		{
			en: 'The run did not show enough right set-ups to work alone yet. It says nothing of what kind of person someone is.',
			es: 'La prueba todavía no mostró suficientes preparaciones correctas para trabajar solo. No dice nada de cómo es la persona.'
		},
		{
			en: `Of people who truly get ${whole(p1)} of 100 right, ${unlucky.en} fail by chance.`,
			es: `De las personas que de verdad resuelven bien ${whole(p1)} de cada 100, ${unlucky.es} fallan por azar.`
		}
	];
}

/** How sure the run itself is about a person; shown beside a verdict, never instead of it. */
export function meaningOfRun(right: number, n: number): Text {
	const { low, high } = wilsonInterval(right, n);
	return {
		en: `${right} of ${n} right: the true share lies roughly between ${whole(low)} and ${whole(high)} of 100 (95 % interval, rough because the run ended at its verdict).`,
		es: `${right} de ${n} bien: la proporción real está aproximadamente entre ${whole(low)} y ${whole(high)} de cada 100 (intervalo del 95 %, aproximado porque la prueba terminó con su resultado).`
	};
}
