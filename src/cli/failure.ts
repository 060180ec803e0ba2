/** What ends a command before its work is done; its message is for the person who typed it. */

export class Failure extends Error {}

/** Something could not be read or written, or was asked for wrongly. */
export const couldNot = 2;
