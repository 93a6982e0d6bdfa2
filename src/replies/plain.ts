/** A reply as plain text: the terminal's form, and the full text that stands beside every platform's blocks. */
import type { Button, Item, Line, Reply, Section } from './reply.ts';

export const plainLine = (line: Line): string =>
  line.map((span) => (typeof span === 'string' ? span : span.bold)).join('');

const plainItem = (item: Item): string => plainLine(item.text);

function plainSection(section: Section): string[] {
  if (section.items.length === 0) return [];
  const lead = section.heading === undefined ? [] : [section.heading];
  if (section.run) return [[...lead, section.items.map(plainItem).join(' · ')].join(': ')];
  return [
    ...lead,
    ...section.items.map((i) => (section.heading === undefined ? plainItem(i) : `  ${plainItem(i)}`)),
  ];
}

/** Every button of a reply, in the order in which they are numbered. */
export const buttonsOf = (reply: Reply): Button[] => [
  ...reply.sections.flatMap((s) => s.items.flatMap((i) => i.buttons ?? [])),
  ...reply.buttons,
];

/** The text without buttons; lines separated by `\n`. */
export function plainText(reply: Reply): string {
  const lines = [
    ...(reply.caution ?? []).map(plainLine),
    ...(reply.title ? [plainLine(reply.title)] : []),
    ...reply.sections.flatMap(plainSection),
  ];
  return lines.join('\n');
}
