/** Words for a person, in every language there is: a missing one does not compile. */
export type Text = { readonly en: string; readonly es: string };
