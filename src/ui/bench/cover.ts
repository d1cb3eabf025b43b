import { getContext, setContext } from 'svelte';

/** Whether a page of the guide lies over what is here: it is then out of sight, and hears no key. */
type IsCovered = () => boolean;
const COVER = Symbol('cover');

export const setCover = (isCovered: IsCovered): void => void setContext(COVER, isCovered);
export const getCover = (): IsCovered => getContext<IsCovered | undefined>(COVER) ?? (() => false);
