import type { Sheet } from '../materials/sheet';

/** Whether a casting is poured molten and sets by cooling, not by curing. */
export const isMelted = ({ family }: Pick<Sheet, 'family'>): boolean => family === 'casting wax';
