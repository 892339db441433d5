import type { Station } from '../../station';
import { fieldsOf } from '../field';

/** Where a reading stands to the window of the job. */
export const STANDS = {
	low: { en: 'below the window', es: 'por debajo de la ventana' },
	inside: { en: 'inside the window', es: 'dentro de la ventana' },
	high: { en: 'above the window', es: 'por encima de la ventana' }
} as const;
export type Stand = keyof typeof STANDS;

const at = <const S extends Exclude<Station, 'intake'>>(station: S) =>
	fieldsOf({ station, competency: station });

/** Instruments as they stand, read off, and what the reading means for the job. */
export const gaugeReadingFields = {
	'blast-gauge-reads': at('preparation').quantity(
		'pressure',
		'Cabinet regulator, nozzle open: what does it read? Write the unit too',
		'Regulador de la cabina, boquilla abierta: ¿qué marca? Escriba también la unidad'
	),
	'blast-gauge-stands': at('preparation').choice(
		STANDS,
		'Where does this blast pressure stand for this job?',
		'¿Cómo queda esta presión de granallado para este trabajo?'
	),
	'cup-watch-reads': at('mixing').quantity(
		'duration',
		'Flow cup of the data sheet: what does the stopwatch read? Write the unit too',
		'Copa de la hoja técnica: ¿qué marca el cronómetro? Escriba también la unidad'
	),
	'cup-watch-stands': at('mixing').choice(
		STANDS,
		'Where does this cup time stand for this job?',
		'¿Cómo queda este tiempo de copa para este trabajo?'
	),
	'cap-gauge-reads': at('spraying').quantity(
		'pressure',
		'Test cap, trigger pulled: what does its gauge read? Write the unit too',
		'Boquilla de prueba, gatillo apretado: ¿qué marca su manómetro? Escriba también la unidad'
	),
	'cap-gauge-stands': at('spraying').choice(
		STANDS,
		'Where does this cap pressure stand for this job?',
		'¿Cómo queda esta presión en la boquilla para este trabajo?'
	),
	'film-gauge-reads': at('inspection').quantity(
		'length',
		'Thickness gauge, mean of three readings at one spot: what does it show? Write the unit too',
		'Medidor de espesor, promedio de tres lecturas en un sitio: ¿qué muestra? Escriba también la unidad'
	),
	'film-gauge-stands': at('inspection').choice(
		STANDS,
		'Where does this spot stand between the lowest and the highest that pass on this job?',
		'¿Cómo queda este sitio entre el mínimo y el máximo que pasan en este trabajo?'
	)
} as const;
