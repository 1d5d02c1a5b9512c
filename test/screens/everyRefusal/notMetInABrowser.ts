/**
 * Refusals that nobody can meet at a browser, whatever a page sends, each with the reason. What a request can be rewritten
 * to meet does not belong here.
 */
export const notMetInABrowser: Readonly<Record<string, string>> = {
  'checkRefusals.busy':
    'It takes four records that are all looked through at that very moment, and no browser can hold one of them up. Held in test/actions/longWork.test.ts.',
  'signingRefusals.no-such-revision':
    'No revision is ever removed; one that is not of this notebook is refused before, since no party of the household is in it.',
  'accountRefusals.no-such-account': 'The same of final accounts.',
  'fileRefusal.broke-off': 'Whoever sends it is not connected any more, and its own page says that.',
  'fileRefusal.stopped': 'Whoever stops it is told by the page that nothing of it was kept, in other words.',
  'fileRefusal.disk-full': 'The disk of the install has to be full.',
  'fileRefusal.took-too-long': 'It takes a photo that the install can’t read in a minute.',
}
