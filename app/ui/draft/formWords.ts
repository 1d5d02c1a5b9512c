/** What sending a form comes to: most are saved, a signature is signed. */
export type Done = 'saved' | 'signed'

/** What the forms say. One place, so that the same thing is always said the same way. */
export const formWords = {
  save: 'Save',
  sending: { saved: 'Saving …', signed: 'Signing …' },
  saved: 'Saved.',
  savedButMore: 'Saved, but not what you typed since. Save again.',
  notYet: { saved: 'Not saved yet.', signed: 'Not signed yet.' },
  leave: 'There are changes here that are not saved. Leave the page without them?',
  leaveKept:
    'There are changes here that are not saved. Leave the page? They wait in this browser until you come back.',
  savedAt: (time: string) => `Saved at ${time}.`,
  waits:
    'Not sent yet: there is no connection. It waits in this browser and is sent when the connection is back.',
  lostKept:
    'Not saved: the connection was lost, and it may have arrived all the same. What you typed waits in this browser; look whether it arrived before you send it again.',
  outdatedKept:
    'Not saved: the program was renewed while this page was open. What you typed waits in this browser: load the page again.',
  unfit: (count: number) =>
    count === 1 ? 'Not saved yet: one thing to mend.' : `Not saved yet: ${count} things to mend.`,
  asTyped: 'Save as I type',
  asTypedHint: 'A changed item loses both marks.',
  restored: (when: string) => `What you typed on ${when} was not saved yet: it stands below.`,
  restoredSent: 'It had been sent, but no answer came.',
  putBackSaved: 'Put back what is saved',
  putBackDone: 'This is what is saved.',
  putBackUndo: 'Bring back what I typed',
  savedTogether: (by: string | undefined, labels: string) =>
    `Saved, with what ${by ?? 'somebody'} had changed meanwhile: ${labels}.`,
  mergeTitle: 'Saved twice: choose what is to stand',
  mergeLead: (by: string | undefined, when: string | undefined) =>
    `${by ?? 'Somebody'} saved this${when === undefined ? '' : ` on ${when}`}, after you had opened it. Nothing is lost on either side. Choose where you both changed the same:`,
  mergeTaken: (labels: string) => `Only they changed, and taken over: ${labels}.`,
  /** The same where the other version is one's own, saved in another window. */
  ownLead: (when: string | undefined) =>
    `This was saved in another window of yours${when === undefined ? '' : ` on ${when}`}, after you had opened it here. Nothing is lost in either window.`,
  ownMerge: 'Choose where both changed the same:',
  ownConflict: 'Choose which is to stand.',
  ownTaken: (labels: string) => `Only changed in the other window, and taken over: ${labels}.`,
  ownTogether: (labels: string) =>
    `Saved, with what was saved in another window of yours meanwhile: ${labels}.`,
  /** Whose a version is: theirs, one's own of another window, or that of this form. */
  theirs: 'Theirs',
  otherWindow: 'Saved in another window of yours',
  yours: 'Yours',
  here: 'Typed here',
  keepSaved: 'Keep what is saved',
  mergeUnchosen: 'Choose one of the two.',
  mergeSave: 'Save as chosen',
  lost: (done: Done) =>
    `Not ${done}: the connection was lost. What you typed is still here; press the button again.`,
  broke: (done: Done) =>
    `Not ${done}: something went wrong on our side. What you typed is still here; press the button again.`,
  outdated: (done: Done) =>
    `Not ${done}: the program was renewed while this page was open. Copy what you need from here, then load the page again.`,
  pressUnsaved:
    'Not done: something on this page is typed and not saved, and would not be in what you agree to. Save it first, or put it back.',
  pressLost: 'Not done: the connection was lost. Try again.',
  pressBroke: 'Not done: something went wrong on our side. Try again.',
  pressOutdated: 'Not done: the program was renewed while this page was open. Load the page again.',
  working: 'One moment …',
  mend: 'To mend:',
  /** How the words of a fault begin where something is missing. */
  needed: 'Needed:',
  lookAt: 'To look at:',
  summaryTitle: (count: number, done: Done) =>
    `Not ${done}: ${count === 1 ? 'one thing' : `${count} things`} to mend`,
  conflictTitle: 'Saved twice: choose a version',
  conflictLead: (by: string | undefined, when: string | undefined) =>
    `${by ?? 'Somebody'} saved this${when === undefined ? '' : ` on ${when}`}, after you had opened it. Nothing of yours is lost; nothing of theirs has been written over. Choose which is to stand.`,
  conflictSame: 'The two versions read the same.',
  keepTheirs: 'Keep what they saved',
  saveMine: 'Save mine over it',
  removeMine: 'Remove it all the same',
  theirsLoaded: 'This is now what they saved.',
  goneTitle: { saved: 'Not saved', signed: 'Not signed' },
  removeAsk: 'Take it out of the notebook?',
  removeNo: 'No, leave it',
  removeYes: (label: string) => `Yes: ${label.charAt(0).toLowerCase()}${label.slice(1)}`,
  noScript: 'This page needs scripts to be allowed in the browser before anything can be saved.',
  rowName: (label: string, index: number) => (label === '' ? `row ${index + 1}` : `“${label}”`),
  rowUp: (name: string) => `Move ${name} up`,
  rowDown: (name: string) => `Move ${name} down`,
  rowRemove: (name: string) => `Remove ${name}`,
  rowMoved: (name: string, place: number, count: number) => `${name} is now ${place} of ${count}.`,
  /** What opens a row that is read, and what makes it one again. */
  rowOpen: 'Change',
  rowFold: 'Fold away',
  rowRemoved: (name: string) => `Removed ${name}.`,
  takenOut: (name: string) => `Taken out: ${name}.`,
  rowUndo: 'Put it back',
  writtenOver: 'The text was replaced.',
  filledInAnew: 'The fields below were filled in anew.',
  /** After what was changed and can be put back, as long as it is not saved. */
  beforeSaving: 'Nothing of it counts before you save.',
  putBackText: 'Put back what stood there',
  rowsNone: 'None yet.',
  rowsFull: (max: number) => `There is room for ${max}.`,
  lengthUnread: 'Not read as a length yet. Write the unit too: 6 ft, 6\' 2-1/2" or 1.83 m.',
  lengthMeant: (length: string) => `Not read as a length yet. Write ${length}, if that is meant.`,
  copy: 'Copy',
  copied: 'Copied.',
  copySelf: 'Marked: now copy it with your device’s own copy command.',
  padClear: 'Wipe it away',
  padHint: 'Draw with a finger, a pen or a mouse. You can leave this out: typing your name is enough here.',
  padBack: 'Bring it back',
  padEmpty: 'Nothing drawn.',
  padDrawn: 'Drawn.',
} as const
