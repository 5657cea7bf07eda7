/** Types of the script that makes an example office. */
/** @returns days whose slip is not mended yet */
export function makeOffice(folder: string, count?: number): string[];
export function pathOf(index: number): string;
