import { statedValue, statedWindow, type ValueLine, type WindowLine } from './in-force';
import { CURE_LINES } from './lines';
import type { SheetProblem } from './problem';
import type { DataSheet } from './sheet';
import { startDays } from './start-days';

type Found = SheetProblem | undefined;

/** Runs a comparison on every day a number changes; the first day it fails is named. */
const onEveryDay = (
	sheet: DataSheet,
	path: string,
	fails: (on: string) => boolean,
	en: string,
	es: string
): Found => {
	const day = startDays(sheet).find(fails);
	return day === undefined
		? undefined
		: { path, text: { en: `${en} (from ${day})`, es: `${es} (desde ${day})` } };
};

/** Numbers of a sheet that cannot both be true on some day: a ratio outside its own band, a cure that makes fume. */
export function comparedNumbers(sheet: DataSheet): Found[] {
	const value = (line: ValueLine, on: string) => statedValue(sheet, line, on)?.value;
	const window = (line: WindowLine, on: string) => statedWindow(sheet, line, on);
	const outsideBand = (on: string) => {
		const [ratio, band] = [value('mix-ratio', on), window('mix-ratio-band', on)];
		return ratio !== undefined && band !== undefined && (ratio < band.min.value || ratio > band.max.value);
	};
	const fumes = (line: WindowLine) => (on: string) => {
		const [limit, cure] = [value('fume-above', on), window(line, on)];
		return limit !== undefined && cure !== undefined && cure.max.value >= limit;
	};
	return [
		onEveryDay(
			sheet,
			'lines.mix-ratio',
			outsideBand,
			'The ratio lies outside the band the sheet permits.',
			'La relación está fuera de la banda que permite la hoja.'
		),
		...CURE_LINES.map(([line]) =>
			onEveryDay(
				sheet,
				`lines.${line}`,
				fumes(line),
				'This cure reaches the temperature at which the coating gives off harmful fume.',
				'Este curado llega a la temperatura a la que el recubrimiento desprende humo nocivo.'
			)
		)
	];
}
