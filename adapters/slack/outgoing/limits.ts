/** Slack's limits, and the ones that we keep below them for the sake of phones. */
export const LIMITS = {
  /** Blocks of a message; a modal or a home view takes 100. */
  messageBlocks: 50,
  viewBlocks: 100,
  /** Characters of one stretch of text; Slack takes 3,000 in a section. */
  stretch: 1_500,
  /** Characters of all blocks of a message together; Slack refuses somewhere above 13,000. */
  message: 12_000,
  /** The plain text beside the blocks; Slack advises 4,000, and refuses more in an edit. */
  plain: 3_900,
  /** A private message is at most 4,000 bytes. */
  privateBytes: 3_900,
  header: 150,
  label: 75,
  /** Buttons in one row: more than that is a list to choose from. */
  row: 10,
  options: 100,
  itemsWithButtons: 7,
  modalTitle: 24,
  fieldLabel: 45,
  placeholder: 100,
  fieldText: 3_000,
  metadata: 3_000,
} as const;
