/** A value that is not accepted. The message lists what is accepted. */
export class Rejection extends Error {}
