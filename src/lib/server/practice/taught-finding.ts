import { breaksInto, DEFECTS, type Finding } from '$lib/engine';
import { say } from '$lib/i18n';
import { findingView, pictureView, type Offered, type Reader } from '$lib/paper';

/** What a breach would bring out of the oven, as a picture; nothing for a rule that hurts no film. */
function pictureOf({ zone, off, rule }: Finding, seed: number, reader: Reader) {
	const [defect] = off === null ? [] : breaksInto(rule, off);
	if (!defect) return undefined;
	const { src, shows } = pictureView(
		{ defect, severity: zone === 'amber' ? 1 : 2, seed },
		'plain',
		reader.lang
	);
	return { name: say(DEFECTS[defect], reader.lang), src, shows };
}

/** A finding of a practice drill in words, with a picture of what it would lead to. */
export function taughtFinding(finding: Finding, seed: number, offered: Offered, reader: Reader) {
	const picture = finding.received && pictureOf(finding, seed, reader);
	return { ...findingView(finding, reader, offered[finding.field]), ...(picture ? { picture } : {}) };
}
