import { format } from '../format';

const en = {
	error: 'Correct this:',
	units: (units: string[]) => `A number with its unit: ${format.either(units, 'en')}.`,
	pickOne: 'Choose one.',
	pickAll: 'Choose all that apply.',
	orderHow: 'Put them in order with the buttons or by dragging the handle.',
	up: (step: string) => `Move up: ${step}`,
	down: (step: string) => `Move down: ${step}`,
	upShort: 'Up',
	downShort: 'Down',
	moved: (step: string, place: number, of: number) => `${step}: now step ${place} of ${of}`,
	toCorrect: (count: number) =>
		`${count} ${format.plural(count, 'en', { one: 'entry', other: 'entries' })} to correct`
};

const es = {
	error: 'Corrija esto:',
	units: (units: string[]) => `Un número con su unidad: ${format.either(units, 'es')}.`,
	pickOne: 'Elija una opción.',
	pickAll: 'Elija todas las que correspondan.',
	orderHow: 'Póngalos en orden con los botones o arrastrando el asa.',
	up: (step: string) => `Subir: ${step}`,
	down: (step: string) => `Bajar: ${step}`,
	upShort: 'Subir',
	downShort: 'Bajar',
	moved: (step: string, place: number, of: number) => `${step}: ahora es el paso ${place} de ${of}`,
	toCorrect: (count: number) =>
		`${count} ${format.plural(count, 'es', { one: 'dato', other: 'datos' })} por corregir`
} satisfies typeof en;

export const fields = { en, es };
