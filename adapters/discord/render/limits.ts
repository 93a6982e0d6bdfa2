/** What one message of Discord may hold. Source: its developer documentation, components and message resources. */

/** Components of a message, nested ones counted. */
export const MOST_COMPONENTS = 40;
/** Characters over all text of a message; documented as 4,000, the rest is headroom. */
export const MOST_TEXT = 3900;
export const BUTTONS_A_ROW = 5;
export const OPTIONS_A_SELECT = 25;
/** Documented 80; more than about 34 is cut on a phone. */
export const MOST_LABEL = 80;
export const MOST_OPTION_LABEL = 100;
export const MOST_CUSTOM_ID = 100;
/** More choices than this are offered as a list to pick from: three rows of buttons fill a phone. */
export const MOST_ANSWER_BUTTONS = 10;
export const MOST_BUTTONS = 15;
/** Each costs a text, a row and up to three buttons of the 40 components; the rest is for title and footer. */
export const ITEMS_WITH_BUTTONS = 7;

export const MOST_TITLE = 45;
export const MOST_FIELD_LABEL = 45;
export const MOST_PLACEHOLDER = 100;
export const MOST_INPUT = 4000;
export const MOST_FIELDS = 5;

/** At most `most` UTF-16 units, never half a character. */
export const cut = (text: string, most: number): string => {
  if (text.length <= most) return text;
  let kept = '';
  for (const letter of text) {
    if (kept.length + letter.length > most - 1) break;
    kept += letter;
  }
  return `${kept}…`;
};
