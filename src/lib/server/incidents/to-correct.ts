/** What has to be put right in a form before it can be entered: words by field. */
export type ToCorrect = { readonly problems: Readonly<Record<string, string>> };
