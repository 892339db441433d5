/**
 * Pages are forms and paper: they need no script, and what somebody types while a page is still arriving cannot be lost
 * to it. The few pages with something to drag or to answer in place switch it on for themselves.
 */
export const csr = false;
