/** Why nobody is invited or let in by a press. */
export const linkRefusals = {
  onlyFirstInvites: 'Only the first household invites; you are in as the second.',
  nobodyLeft: 'The second household has come in already. Nobody is left to invite.',
  usedAlready: 'This invitation has been used already. Load the page again to see when.',
  onlyInExample: 'Only in the example can one browser change sides.',
} as const
