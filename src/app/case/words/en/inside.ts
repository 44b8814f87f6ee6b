/** Words as they stand inside an English sentence: the first letter small. */
export const lower = (words: string): string => `${words.charAt(0).toLowerCase()}${words.slice(1)}`;
