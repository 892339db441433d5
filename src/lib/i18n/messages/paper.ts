const en = {
	printed: 'Printed',
	lastHash: 'Last hash of the journal when printed',
	demo: 'DEMO SHOP: invented people and data'
};

const es = {
	printed: 'Impreso',
	lastHash: 'Último hash del diario al imprimir',
	demo: 'TALLER DE DEMOSTRACIÓN: personas y datos inventados'
} satisfies typeof en;

export const paper = { en, es };
