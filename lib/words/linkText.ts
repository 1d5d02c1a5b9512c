/** On the start page, for whoever holds a link and not the browser in which it was opened. */
export const followWords = {
  heading: 'You have a link or an invitation',
  about:
    'Open it as it was given to you, or put it in here. It is the only way into a notebook; there are no accounts here.',
  field: 'The link or the invitation',
  press: 'Open it',
} as const

/** Why nobody is invited or let in by a press. */
export const linkRefusals = {
  onlyFirstInvites: 'Only the first household invites; you are in as the second.',
  nobodyLeft: 'The second household has come in already. Nobody is left to invite.',
  usedAlready: 'This invitation has been used already. Load the page again to see when.',
  nothingPasted:
    'Needed: the link or the invitation that you were given, the whole line from http to its last letter.',
  noLink:
    'This is no link of a notebook. A link or an invitation ends in /open/ and 43 letters and digits, a reader’s in /read/ and 43; copy the whole line.',
  unknownHere:
    'Nothing here opens with this. Perhaps a part is missing, or it was replaced or has ended: ask whoever gave it to you for a new one. If it begins with another address, open it there.',
  pageOfNotebook:
    'This is the address of a page within a notebook, and this browser has not come in there. Use your private link or your invitation: it has /open/ in it.',
  onlyInExample: 'Only in the example can one browser change sides.',
} as const
