import type { PracticalSheet } from '$lib/server';

type Shown = { readonly id: string; readonly label: string; readonly error?: string };

/** Every field of the form in the order it stands on the page, for the list of what to correct. */
export const errorsOf = (sheet: PracticalSheet): Shown[] => [
	sheet.day,
	sheet.time,
	sheet.panels,
	...sheet.instruments.flatMap(({ serial, due }) => [serial, due]),
	...sheet.gates,
	...sheet.readings.flatMap(({ title, fields }) =>
		fields.map((field) => ({ ...field, label: `${title}: ${field.label}` }))
	),
	sheet.result,
	sheet.reason,
	sheet.witnessed
];
