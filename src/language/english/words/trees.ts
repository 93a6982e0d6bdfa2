/**
 * Trees that workshops call their printers after. Here a machine's name is the machine, unless the words beside it
 * speak of wood, fruit or streets; the words that do are in `names.ts`.
 */
const TREES: ReadonlySet<string> = new Set(
  (
    'acacia alder apple ash aspen beech birch bamboo cedar cherry chestnut cypress ebony elder elm fir ginkgo ' +
    'hawthorn hazel hemlock hickory holly hornbeam ivy juniper larch laurel lilac lime linden magnolia mahogany maple ' +
    'myrtle oak olive palm pear pine plum poplar rowan sequoia spruce sycamore teak walnut willow yew'
  ).split(' '),
);
export const isTree = (word: string): boolean => TREES.has(word);
