/** What a page says to the version that waits: nobody is in the middle of anything, come in. */
export const TAKE_OVER = 'take over';
