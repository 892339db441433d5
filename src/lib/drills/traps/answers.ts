import { si, type Answer, type Job, type Part, type SubstrateId } from '$lib/engine';
import { massOf } from '../world/part';

/** Short forms for what a person who overlooks a trap answers. */
export const chose = (option: string): Answer => ({ kind: 'choice', option });
export const ticked = (...options: string[]): Answer => ({ kind: 'choices', options });
export const typed = (value: number): Answer => ({ kind: 'quantity', value: si(value), typed: '' });

/** The job with its first part changed. */
export const withPart = (job: Job, change: Partial<Part>): Job => ({
	...job,
	parts: job.parts.map((part, index) => (index === 0 ? { ...part, ...change } : part))
});

/** The job with its first part of another material, and as heavy as that makes it. */
export function withMaterial(job: Job, material: SubstrateId, change: Partial<Part> = {}): Job {
	const { shape, length, width, height, thickness } = job.parts[0]!;
	const sizes = [length * 1e3, width * 1e3, height * 1e3, thickness * 1e3] as const;
	return withPart(job, { material, mass: massOf(shape, material, sizes), ...change });
}

export const materialOf = (job: Job) => job.parts[0]!.material;
export const acceptedBlindly = () => ({ decision: chose('accept'), 'ask-about': ticked() });
