import type { View } from '../request';
import type { Text } from '../text';

/** What grows with severity: how many there are, how far it reaches, or how strongly it shows. */
export type Extent = 'count' | 'area' | 'strength';

/** What is seen of a defect in each view, told without naming it: naming it may be the question. */
export type Look = { readonly grows: Extent } & Readonly<Record<View, Text>>;
