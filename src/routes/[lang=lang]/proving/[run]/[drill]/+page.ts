/** Steps can be dragged into order. */
export const csr = true;
