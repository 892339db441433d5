import type { Feature, Shape, SubstrateId } from '$lib/engine';

/** A sort of part our invented customers send; sizes in mm, low to high. */
export type PartSort = {
	readonly en: string;
	readonly es: string;
	readonly shape: Shape;
	readonly materials: readonly SubstrateId[];
	readonly length: readonly [number, number];
	readonly width: readonly [number, number];
	readonly height: readonly [number, number];
	readonly thickness: readonly [number, number];
	readonly features: readonly Feature[];
};

const sort = (
	[en, es]: readonly [string, string],
	shape: Shape,
	materials: readonly SubstrateId[],
	sizes: Pick<PartSort, 'length' | 'width' | 'height' | 'thickness'>,
	features: readonly Feature[] = []
): PartSort => ({ en, es, shape, materials, ...sizes, features });

export const PART_SORTS: readonly PartSort[] = [
	sort(
		['hinge plate', 'placa de bisagra'],
		'plate',
		['carbon-steel', 'stainless-steel', 'aluminium-6061'],
		{
			length: [60, 200],
			width: [40, 120],
			height: [2, 6],
			thickness: [2, 6]
		},
		['thread', 'datum']
	),
	sort(
		['pump cover', 'tapa de bomba'],
		'box',
		['aluminium-casting'],
		{
			length: [80, 200],
			width: [70, 150],
			height: [20, 60],
			thickness: [4, 9]
		},
		['sealing-face', 'thread']
	),
	sort(
		['spacer ring', 'anillo espaciador'],
		'ring',
		['carbon-steel', 'brass', 'stainless-steel'],
		{
			length: [8, 30],
			width: [30, 120],
			height: [8, 30],
			thickness: [3, 12]
		},
		['datum']
	),
	sort(
		['guide tube', 'tubo guía'],
		'tube',
		['carbon-steel', 'stainless-steel', 'titanium', 'aluminium-6061'],
		{
			length: [120, 900],
			width: [16, 60],
			height: [16, 60],
			thickness: [1, 4]
		},
		['bearing-seat']
	),
	sort(
		['clamp bracket', 'soporte de abrazadera'],
		'bracket',
		['carbon-steel', 'aluminium-6061', 'aluminium-7075'],
		{
			length: [40, 160],
			width: [25, 80],
			height: [30, 120],
			thickness: [2, 8]
		},
		['thread', 'ground-contact']
	),
	sort(
		['roller pin', 'perno de rodillo'],
		'bar',
		['carbon-steel', 'stainless-steel'],
		{
			length: [40, 200],
			width: [8, 30],
			height: [8, 30],
			thickness: [8, 30]
		},
		['bearing-seat']
	),
	sort(['spring clip', 'clip de resorte'], 'bracket', ['spring-steel'], {
		length: [30, 90],
		width: [8, 25],
		height: [12, 40],
		thickness: [0.6, 1.6]
	}),
	sort(
		['instrument housing', 'carcasa de instrumento'],
		'box',
		['aluminium-6061', 'zinc-die-cast'],
		{
			length: [60, 180],
			width: [40, 120],
			height: [20, 70],
			thickness: [2, 5]
		},
		['sealing-face', 'ground-contact', 'thread']
	),
	sort(
		['sensor shell', 'cubierta de sensor'],
		'box',
		['abs', 'polycarbonate', 'polyamide', 'peek'],
		{
			length: [40, 140],
			width: [30, 90],
			height: [15, 50],
			thickness: [2, 4]
		},
		['thread']
	),
	sort(
		['drive pulley', 'polea de transmisión'],
		'ring',
		['aluminium-6061', 'carbon-steel'],
		{
			length: [15, 50],
			width: [60, 200],
			height: [15, 50],
			thickness: [8, 25]
		},
		['bearing-seat', 'thread']
	),
	sort(
		['fairing panel', 'panel de carenado'],
		'plate',
		['carbon-laminate', 'glass-laminate'],
		{
			length: [200, 900],
			width: [120, 500],
			height: [1.5, 4],
			thickness: [1.5, 4]
		},
		['datum']
	),
	sort(
		['valve lever', 'palanca de válvula'],
		'bar',
		['brass', 'stainless-steel', 'zinc-die-cast'],
		{
			length: [60, 180],
			width: [10, 25],
			height: [10, 25],
			thickness: [10, 25]
		},
		['thread']
	)
];

/** Invented customers. */
export const CUSTOMERS = [
	'Arroyo Seco Pump Works (demo)',
	'Northfork Tooling (demo)',
	'Taller Ruiseñor (demo)',
	'Blackwater Instruments (demo)',
	'Loma Alta Racing Parts (demo)',
	'Gable & Finch Hardware (demo)'
] as const;
