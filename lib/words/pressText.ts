/** What any press or form is refused by, whatever it is about. */
export const pressRefusals = {
  /** Of a press whose form can't be read: nobody made it by hand, so there is no field to name. */
  unreadable: 'This press could not be read. Load the page again.',
  /** Of a form whose fields can't be read, for the same reason. */
  form: 'This form could not be read. Load the page again.',
  /** Of what a page of somebody else sends in a household's name. */
  foreign: 'Not sent from a page of this notebook.',
  /** Of a field with a few answers to choose from. */
  unchosen: 'Needed: choose one of the answers.',
  draft: 'This form could not be read, or is larger than 2 MB. Nothing was changed.',
  /** A notebook that is closed takes entries of the books, and nothing else. */
  closed: (revision: number) =>
    `Nothing was changed: the notebook was closed by revision ${revision}, which all have signed. Either household can open it again on the page “Closing”.`,
} as const

/** Why nothing came of a press that is about a section, gate or common cost. */
export const itemRefusals = {
  removed: 'This item was removed in the meantime. “The line” shows what there is now.',
  /** Where something was typed about it. */
  removedTyped: 'This was removed in the meantime. What you typed is still on the page, to copy from.',
  changed:
    'This item was changed since you opened the page. Load the page again, read what changed, then agree to that.',
  hasEntries:
    'Money and hours has entries for this item. Take those entries back first; they stay in the book and are shown as taken back.',
} as const

/** Where quantities were to be put among cost lines and there are none. */
export const takeOffRefusals = {
  nothingYet: 'The take-off has no quantity for this item yet: give it a build-up and its dimensions first.',
} as const

/** Why a build-up is not kept under a name. */
export const buildUpRefusals = {
  nothingToKeep: 'Nothing to keep yet: choose a build-up above and save it.',
  unnamed: 'Needed: a name, such as “Our pipe and mesh”.',
  nameTaken: (name: string, of: string) => `"${name}" is already the name of ${of}. Choose another name.`,
} as const
