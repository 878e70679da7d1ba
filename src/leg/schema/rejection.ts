/** A value that is not accepted. The message says what is. */
export class Rejection extends Error {}
