/** What can have caused a defect as a network of chances: what is likely, and which test tells most. */
export type { Evidence, Network, NetworkCause, NetworkTest } from './network';
export { chanceOf } from './chance-of';
export { posterior, type Chances } from './posterior';
export { expectedInformation } from './expected-information';
export { bestTest, openTests, type OpenTest } from './best-test';
export { BY_EYE, testEnd, type TestEnd } from './by-eye';
export { DIAGNOSIS_TEACHING } from './teaching';
export { byRule, networkOf } from './network-of';
export { tracedChance } from './traced-chance';
