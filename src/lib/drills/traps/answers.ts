import { si, type Answer, type Part, type Job } from '$lib/engine';

/** Short forms for what a person who overlooks a trap answers. */
export const chose = (option: string): Answer => ({ kind: 'choice', option });
export const ticked = (...options: string[]): Answer => ({ kind: 'choices', options });
export const typed = (value: number): Answer => ({ kind: 'quantity', value: si(value), typed: '' });

/** The job with its first part changed. */
export const withPart = (job: Job, change: Partial<Part>): Job => ({
	...job,
	parts: job.parts.map((part, index) => (index === 0 ? { ...part, ...change } : part))
});

export const materialOf = (job: Job) => job.parts[0]!.material;
export const acceptedBlindly = () => ({ decision: chose('accept'), 'ask-about': ticked() });
