import type { KitSheet } from '../../procedure/kit-sheet';

/** A batch under way, or a kit that may become one. */
export type Wine = { name: string; sheet: KitSheet };
