/** Figures by what they say, unit in the name. */
export type Figures = Readonly<Record<string, number>>;
