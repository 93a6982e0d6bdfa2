/** Figures as people read them: 2,318 h · 6.5 h · 1 h 25 min · 2 nozzles. */

/** At most one decimal, thousands with a comma: 2318 -> "2,318", 6.5 -> "6.5". */
export function figure(value: number, decimals = 1): string {
  const rounded = Number(value.toFixed(decimals));
  const [whole = '0', fraction] = String(Math.abs(rounded)).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+(?!\d))/gu, ',');
  return `${rounded < 0 ? '-' : ''}${grouped}${fraction === undefined ? '' : `.${fraction}`}`;
}

/** Running hours: one decimal below a hundred, none above. */
export const hours = (value: number): string => `${figure(value, Math.abs(value) < 100 ? 1 : 0)} h`;

/** Minutes of work: "5 min", "1 h 25 min", "2 h". */
export function minutes(value: number): string {
  const whole = Math.round(value);
  const h = Math.floor(whole / 60);
  const m = whole % 60;
  if (h === 0) return `${m} min`;
  return m === 0 ? `${h} h` : `${h} h ${m} min`;
}

export const count = (n: number, one: string, many = `${one}s`): string =>
  `${figure(n, 0)} ${n === 1 ? one : many}`;
/** The word alone, in the number that `n` asks for. */
export const plural = (n: number, one: string, many = `${one}s`): string => (n === 1 ? one : many);
