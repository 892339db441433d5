export { GaugePanel as default } from '$lib/ui';
