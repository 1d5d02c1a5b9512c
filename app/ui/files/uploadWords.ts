/** What the form for files says while it works. */
export const uploadWords = {
  add: 'Add',
  choose: 'Choose one',
  file: 'Files',
  fileHint: (formats: string, size: string) => `${formats}, up to ${size} each. You can choose several.`,
  kind: 'What it shows',
  item: 'Belongs to',
  caption: 'Caption',
  captionHint: 'What one sees, and from where. The same for all files that you add now.',
  waiting: 'Waits for its turn.',
  sending: (percent: number, sent: string, all: string) => `${percent} % sent: ${sent} of ${all}`,
  checking: 'All is sent. It is being checked and stored.',
  added: 'Added.',
  cancelled: 'Stopped. Nothing of it was kept.',
  list: 'Files being added',
  bar: (name: string) => `How much of ${name} is sent`,
  place: (name: string, at: number, all: number) => `${name}, ${at} of ${all}`,
  stopAll: 'Stop all that are left',
  lost: (name: string) =>
    `“${name}” was not added: the connection was lost. Add it again once you are connected.`,
  broke: (name: string) =>
    `“${name}” was not added: something went wrong on our side. Add it again in a while.`,
  allAdded: (count: number) => (count === 1 ? 'One file was added.' : `${count} files were added.`),
  someAdded: (added: number, count: number) => `${added} of ${count} files were added.`,
} as const
