import { cite } from '../../sources/provenance';
import { bar, celsius, degrees, metresPerSecond, millimetres, percent } from '../../units/construct';
import { defaultNumber, defaultWindow } from '../define';

/** Shop values the rules of this station lean on. */
export const sprayingValues = {
	'spray.dew-point-margin': defaultNumber(
		'temperature-difference',
		degrees(3),
		'The coldest part stays above the dew point by',
		'La pieza más fría queda por encima del punto de rocío en',
		cite('iso-8502-4', 'margin of 3 °C; United States practice says 5 °F')
	),
	'spray.dew-point-rounding': defaultNumber(
		'temperature-difference',
		degrees(1.5),
		'Lowest part temperature: rounding up that is still right',
		'Temperatura mínima de la pieza: redondeo hacia arriba que aún es correcto'
	),
	'spray.air': defaultWindow(
		'temperature',
		celsius(18),
		celsius(28),
		'Air temperature while spraying, where the sheet is silent',
		'Temperatura del aire al aplicar, si la hoja no la indica'
	),
	'spray.humidity': defaultWindow(
		'fraction',
		percent(35),
		percent(70),
		'Relative humidity while spraying, where the sheet is silent',
		'Humedad relativa al aplicar, si la hoja no la indica'
	),
	'spray.part': defaultWindow(
		'temperature',
		celsius(18),
		celsius(30),
		'Part temperature while spraying',
		'Temperatura de la pieza al aplicar'
	),
	'spray.transfer': defaultNumber(
		'fraction',
		percent(65),
		'Share of the sprayed coating that reaches the part',
		'Parte del recubrimiento aplicado que llega a la pieza',
		cite(
			'p2-handbook',
			'HVLP guns',
			{ read: '50 to 65 % in practice; the upper end, as the batch may be a quarter larger' },
			'handbook'
		)
	),
	'gun.cap-pressure': defaultWindow(
		'pressure',
		bar(0.35),
		bar(0.69),
		'Pressure at the air cap, where the sheet is silent',
		'Presión en la boquilla de aire, si la hoja no la indica'
	),
	'gun.distance': defaultWindow(
		'length',
		millimetres(75),
		millimetres(150),
		'Small gun to part, where the sheet is silent',
		'De la pistola pequeña a la pieza, si la hoja no lo indica'
	),
	'gun.fan': defaultWindow(
		'length',
		millimetres(50),
		millimetres(150),
		'Fan this gun can make',
		'Abanico que puede dar esta pistola'
	),
	'gun.fan-beyond': defaultWindow(
		'fraction',
		percent(20),
		percent(50),
		'Fan wider than the part by',
		'Abanico más ancho que la pieza en'
	),
	'gun.overlap': defaultWindow(
		'fraction',
		percent(40),
		percent(60),
		'Overlap of the passes',
		'Traslape de las pasadas',
		cite(
			'navair-01-1a-509-2',
			'A-8',
			{ read: '50 % overlap; the spread around it is common practice' },
			'handbook'
		)
	),
	'gun.speed': defaultWindow(
		'speed',
		metresPerSecond(0.2),
		metresPerSecond(0.4),
		'Gun speed',
		'Velocidad de la pistola'
	),
	'film.wet-tolerance': defaultNumber(
		'fraction',
		percent(15),
		'Wet film: how far off is still right',
		'Película húmeda: desviación que aún es correcta'
	)
} as const;
