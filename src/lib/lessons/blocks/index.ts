/**
 * What a lesson's Markdown may embed, and the page that shows it needs. No engine code: everything comes as plain data
 * through the context. A lesson begins with `<script>import { … } from '$lib/lessons/blocks';</script>`.
 */
export { default as BenchSum } from './BenchSum.svelte';
export { default as CautionBlock } from './CautionBlock.svelte';
export { default as Check } from './Check.svelte';
export { default as DefectList } from './DefectList.svelte';
export { default as Figure } from './Figure.svelte';
export { default as Limit } from './Limit.svelte';
export { default as Mistake } from './Mistake.svelte';
export { default as RuleSection } from './RuleSection.svelte';
export { default as ShopValues } from './ShopValues.svelte';
export { default as WorkedExample } from './WorkedExample.svelte';
export { defectIn, lesson, setLesson } from './context';
export { limitOf } from './limit-of';
export { prose } from './prose';
