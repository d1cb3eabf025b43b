import type { KitSheet } from '../../procedure/kit-sheet';

/** What a maker says when a batch begins. */
export type Beginning = { sheet: KitSheet; name: string; freeHour: number };
