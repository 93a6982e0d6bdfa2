/** Slack's blocks as they look on a narrow phone, for snapshots that a person can judge. */
const WIDTH = 42;

interface Drawn {
  type: string;
  text?: unknown;
  style?: unknown;
  elements?: readonly Drawn[];
  placeholder?: unknown;
  options?: readonly Drawn[];
  label?: unknown;
  element?: Drawn;
  optional?: boolean;
  multiline?: boolean;
  initial_value?: string;
}

export const drawBlocks = (blocks: readonly unknown[]): string =>
  blocks.map((b) => block(asDrawn(b))).join('\n');

export const drawView = (view: unknown): string => {
  const { title, submit, blocks = [] } = view as { title?: unknown; submit?: unknown; blocks?: unknown[] };
  return [
    ...(title === undefined ? [] : [`== ${words(title)} ==`]),
    drawBlocks(blocks),
    ...(submit === undefined ? [] : [`( Cancel ) ( ${words(submit)} )`]),
  ].join('\n');
};

const asDrawn = (value: unknown): Drawn => value as Drawn;
const words = (text: unknown): string =>
  typeof text === 'string' ? text : ((text as { text?: string } | undefined)?.text ?? '');

function block(b: Drawn): string {
  switch (b.type) {
    case 'header':
      return wrapped(`# ${words(b.text)}`, '  ');
    case 'divider':
      return '-'.repeat(WIDTH);
    case 'actions':
      return wrapped((b.elements ?? []).map(control).join(' '), '');
    case 'rich_text':
      return (b.elements ?? []).map(part).join('\n');
    case 'input':
      return `${words(b.label)}${b.optional ? ' (optional)' : ''}\n  ${control(b.element ?? { type: '?' })}`;
    default:
      return JSON.stringify(b);
  }
}

/** Spaces inside a control must not be broken at. */
function control(e: Drawn): string {
  const solid = (text: string): string => text.replaceAll(' ', '\u00a0');
  if (e.type === 'button') return solid(`[${words(e.text)}]`);
  if (e.type.endsWith('select')) {
    const options = (e.options ?? []).map((o) => words(o.text));
    return (
      solid(`[${words(e.placeholder)} v]`) +
      (options.length > 0 ? ` of ${options.length}: ${options.join(', ')}` : '')
    );
  }
  return `|${e.initial_value ?? words(e.placeholder ?? '')}${e.multiline ? '\n  |' : ''}`;
}

function part(p: Drawn): string {
  if (p.type === 'rich_text_list')
    return (p.elements ?? []).map((item) => wrapped(`• ${inline(item)}`, '  ')).join('\n');
  return inline(p)
    .split('\n')
    .map((line) => wrapped(line, ''))
    .join('\n');
}

const inline = (p: Drawn): string =>
  (p.elements ?? []).map((e) => (e.style ? `*${words(e.text)}*` : words(e.text))).join('');

function wrapped(text: string, indent: string): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = `${indent}${word}`;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line].join('\n').replaceAll('\u00a0', ' ');
}
