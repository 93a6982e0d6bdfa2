/** Discord's components as text, about as they stand on a phone: one line a paragraph, buttons in brackets. */
type Node = Readonly<Record<string, unknown>>;
const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null;
const nodesOf = (value: unknown): Node[] => (Array.isArray(value) ? value.filter(isNode) : []);
const textOf = (value: unknown): string => (typeof value === 'string' ? value : '');

const MARKS: Readonly<Record<number, string>> = { 1: '*', 2: '', 3: '+', 4: '!' };
const label = (node: Node): string => {
  const mark = MARKS[Number(node['style'])] ?? '';
  return `[${mark}${textOf(node['label'])}${mark}]`;
};

/** What Discord shows of the text: backslashes gone, bold in stars. */
const shown = (content: string): string =>
  content.replace(/\\([!-/:-@[-`{-~])/gu, '$1').replace(/\u200b/gu, '');

export function drawComponents(value: unknown): string {
  return nodesOf(value).map(drawOne).join('\n');
}

function drawOne(node: Node): string {
  switch (node['type']) {
    case 1:
      return nodesOf(node['components']).map(drawInRow).join(' ');
    case 10:
      return shown(textOf(node['content']));
    case 17:
      return drawComponents(node['components'])
        .split('\n')
        .map((line) => `| ${line}`)
        .join('\n');
    case 18: {
      const input = isNode(node['component']) ? node['component'] : {};
      const options = nodesOf(input['options']).map((option) => textOf(option['label']));
      const beside =
        options.length > 0 ? options.join(' / ') : textOf(input['value'] ?? input['placeholder']);
      return `${textOf(node['label'])}${input['required'] === true ? ' (needed)' : ''}: [${beside}]`;
    }
    default:
      return `unknown component ${String(node['type'])}`;
  }
}

function drawInRow(node: Node): string {
  if (node['type'] === 2) return label(node);
  const options = nodesOf(node['options']).map((option) => textOf(option['label']));
  return `[${textOf(node['placeholder'])} v: ${options.join(' / ')}]`;
}
