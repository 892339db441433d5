import type { Text } from '$lib/engine';

/** Asks the rule's own field of the set-up sheet on an example job; the engine grades it. */
export type FieldCheck = {
	/** Unique in its lesson; stored with the tries. */
	readonly id: string;
	/** Id of the rule it tests. */
	readonly rule: string;
	readonly kind: 'field';
	/** Id of an example job that calls for the rule; the first that does in this shop if left out. */
	readonly example?: string;
};

/** Asks for a reason: one of a few answers is right. */
export type ReasonCheck = {
	readonly id: string;
	readonly rule: string;
	readonly kind: 'reason';
	readonly question: Text;
	/** Answers by key, in the order shown; put the right one in different places. */
	readonly options: Readonly<Record<string, Text>>;
	/** Key of the right answer. */
	readonly right: string;
	/** Why it is right, shown with either verdict. */
	readonly because: Text;
};

/** A question in a lesson at the place where it tests. */
export type LessonCheck = FieldCheck | ReasonCheck;
