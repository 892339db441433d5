import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'which-thinner', rule: 'named-thinner-only', kind: 'field', example: 'aluminium-brackets' },
	{ id: 'how-much', rule: 'thinner-share', kind: 'field', example: 'aluminium-brackets' },
	{ id: 'cup', rule: 'cup-time', kind: 'field', example: 'steel-plates' },
	{
		id: 'two-cups',
		rule: 'cup-time',
		kind: 'reason',
		question: {
			en: 'The cup of the data sheet is broken. Another one hangs on the wall, with another hole. Your paint runs through it in exactly the seconds of the sheet. What do you know?',
			es: 'La copa de la hoja técnica está rota. En la pared hay otra, con otro orificio. Su pintura pasa por ella justo en los segundos de la hoja. ¿Qué sabe usted?'
		},
		options: {
			right: {
				en: 'The paint is right: the seconds agree.',
				es: 'La pintura está bien: los segundos coinciden.'
			},
			nothing: {
				en: 'Nothing yet: the seconds hold for the cup of the sheet only. Get that cup.',
				es: 'Nada todavía: los segundos solo valen para la copa de la hoja. Hay que conseguir esa copa.'
			},
			thin: {
				en: 'The paint is a little too thin, so add some unthinned mix.',
				es: 'La pintura está algo delgada; se le agrega mezcla sin diluir.'
			}
		},
		right: 'nothing',
		because: {
			en: 'Another hole makes other seconds of the same paint. So the same seconds mean another paint, and nobody can say which without the right cup or both cups’ equations.',
			es: 'Otro orificio da otros segundos con la misma pintura. Entonces los mismos segundos significan otra pintura, y nadie sabe cuál sin la copa correcta o sin las ecuaciones de las dos.'
		}
	},
	{ id: 'opening', rule: 'strainer-opening', kind: 'field', example: 'steel-plates' },
	{
		id: 'clogged',
		rule: 'strainer-opening',
		kind: 'reason',
		question: {
			en: 'The fresh cone clogs after half a cup. In it are soft, clear lumps. A coarser cone lies beside it. What now?',
			es: 'El cono nuevo se tapa a la mitad del vaso. Adentro hay grumos blandos y transparentes. Al lado hay un cono más abierto. ¿Y ahora?'
		},
		options: {
			coarser: {
				en: 'Take the coarser cone; the lumps are small enough.',
				es: 'Tomar el cono más abierto; los grumos son chicos.'
			},
			press: {
				en: 'Press the rest through with the stick.',
				es: 'Empujar el resto con la varilla.'
			},
			age: {
				en: 'Stop and look at the time on the cup: gel means that the mix is going off.',
				es: 'Parar y ver la hora del vaso: el gel dice que la mezcla se está pasando.'
			}
		},
		right: 'age',
		because: {
			en: 'Gel is mix that has already reacted. A coarser cone, or the stick, only sends it on to the part, where it stays as bits in the film.',
			es: 'El gel es mezcla que ya reaccionó. Un cono más abierto o la varilla solo la mandan a la pieza, donde queda como grumos en la película.'
		}
	}
] satisfies readonly LessonCheck[];
