import type { Provenance, Text } from '$lib/engine';
import type { CompetencyId } from './competency';

/** Something a supervisor sees done, or not, while somebody prepares and sprays witness panels. */
export type PracticalGate = {
	readonly id: string;
	readonly label: Text;
	/** Whether a breach stops the practical at once, as one of the safety gates. */
	readonly critical: 'always' | 'with-isocyanate' | 'no';
	readonly provenance: Provenance;
};

const commonPractice: Provenance = { origin: 'common-practice', verification: 'memory' };

const gate = (
	id: string,
	en: string,
	es: string,
	critical: PracticalGate['critical'] = 'no',
	provenance: Provenance = commonPractice
): PracticalGate => ({ id, label: { en, es }, critical, provenance });

const protection = gate(
	'G1',
	'Safety data sheet read, protective equipment chosen from it and worn, seal check done',
	'Hoja de datos de seguridad leída, equipo de protección elegido según ella y puesto, prueba de sello hecha',
	'always'
);

/**
 * What has to be seen done in each competency, in working order. G1 to G8 are the observed gates of the witness-panel
 * practical; the others are its checks by eye. All of them must be met.
 */
export const practicalGates: Readonly<Record<CompetencyId, readonly PracticalGate[]>> = {
	intake: [
		protection,
		gate(
			'asked-first',
			'Everything the ticket left open was asked before work began',
			'Todo lo que la orden dejaba abierto se preguntó antes de empezar'
		),
		gate(
			'hole-clean',
			'Masked hole of W4 clean by thread gauge',
			'Agujero enmascarado de W4 limpio con calibre de rosca'
		)
	],
	preparation: [
		protection,
		gate(
			'water-break',
			'Water film stayed whole on every face, on W1 three times in a row',
			'La película de agua quedó entera en todas las caras; en W1, tres veces seguidas',
			'no',
			{
				origin: 'published',
				verification: { read: 'text of F22-02(07)' },
				source: 'astm-f22',
				where: 'the check; how often is common practice'
			}
		),
		gate(
			'blast-look',
			'Steel like the agreed reference over the whole face, aluminium evenly matt',
			'Acero como la referencia acordada en toda la cara, aluminio mate parejo'
		),
		gate(
			'G6',
			'No bare hand touched a panel after blasting',
			'Ninguna mano sin guante tocó un panel después de granallar'
		)
	],
	mixing: [
		protection,
		gate(
			'G4',
			'Cup labelled with material, lot, expiry and time of mixing',
			'Vaso rotulado con material, lote, vencimiento y hora de mezcla',
			'with-isocyanate'
		),
		gate(
			'mix-log',
			'Amounts of every mix written down or printed as they were taken',
			'Cantidades de cada mezcla anotadas o impresas al tomarlas'
		)
	],
	spraying: [
		protection,
		gate(
			'G2',
			'Booth and fan running, air flow proven, nothing there that can ignite',
			'Cabina y ventilador en marcha, flujo de aire comprobado, nada que pueda encender',
			'always'
		),
		gate(
			'G3',
			'Air, humidity, part temperature and dew point written down before spraying',
			'Aire, humedad, temperatura de la pieza y punto de rocío anotados antes de aplicar'
		),
		gate(
			'air-blotter',
			'Blotter in the air of the gun hose for a minute or more: no stain, no moisture',
			'Papel secante en el aire de la manguera un minuto o más: sin mancha ni humedad',
			'no',
			{
				origin: 'published',
				verification: { read: 'text of D4285-83(99)' },
				source: 'astm-d4285',
				where: 'the blotter test'
			}
		),
		gate(
			'G5',
			'Pressure measured at the air cap with a test cap',
			'Presión medida en la boquilla de aire con boquilla de prueba'
		),
		gate(
			'pattern',
			'Pattern on paper even and oval, neither split nor curved',
			'Abanico en papel parejo y ovalado, ni partido ni curvo'
		),
		gate(
			'film-look',
			'Faces, edges and the recess of W4 looked at by two people: no run on the show face, nothing missed',
			'Caras, bordes y hueco de W4 mirados por dos personas: sin escurridos en la cara visible, nada sin cubrir'
		),
		gate(
			'G7',
			'Mask or hood stayed on until the booth was clear',
			'La máscara o capucha quedó puesta hasta que la cabina estuvo despejada',
			'always'
		)
	],
	curing: [
		protection,
		gate(
			'G8',
			'Purge before heat, load as worked out, thermocouples on the heaviest and on the thinnest or most heat-limited part',
			'Purga antes del calor, carga según el cálculo, termopares en la pieza más pesada y en la más delgada o más limitada por calor',
			'always'
		),
		gate(
			'chart',
			'Oven chart kept: clock started on the part, nothing above the part limit',
			'Gráfica del horno guardada: el reloj empezó con la pieza, nada por encima del límite de la pieza'
		)
	],
	inspection: [
		protection,
		gate(
			'gauge-check',
			'Gauge zeroed on W0 and checked on foils around the window at start, middle and end',
			'Medidor en cero sobre W0 y comprobado con láminas alrededor de la ventana al inicio, a la mitad y al final'
		),
		gate(
			'scale-named',
			'Cross-cut class written with the name of its scale',
			'Clase de corte cruzado anotada con el nombre de su escala'
		)
	]
};
