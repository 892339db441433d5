import { expect, test } from 'vitest';
import { spoken } from '../../../../src/lib/lessons/search/spoken';

const lesson = `---
title: Mixing
version: 1
---

<script>
	import { Check } from '$lib/lessons/blocks';
</script>

Two cans, **one** cup. See [the pot life](pot-life).

## Weigh it

<CautionBlock signal="warning" hazard="Vapour" consequence="It hurts." avoid="Gloves on." />

1. Put the cup on the _scale_.
- Set it to zero.

<Limit rule="stir-time" example="steel-plates" />

<DefectList of={['fisheyes', 'runs']} />

<RuleSection id="stir-time">

Stir slowly.

</RuleSection>
`;

test('a lesson is read without its machinery, a line per paragraph, and with its cautions', () => {
	expect(spoken(lesson).split('\n')).toEqual([
		'Two cans, one cup. See the pot life.',
		'Weigh it',
		'Vapour',
		'It hurts.',
		'Gloves on.',
		'Put the cup on the scale.',
		'Set it to zero.',
		'Stir slowly.'
	]);
});
