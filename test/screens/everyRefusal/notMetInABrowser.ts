/**
 * Refusals that nobody can meet at a browser, whatever a page sends, each with the reason. What a request can be rewritten
 * to meet does not belong here.
 */
export const notMetInABrowser: Readonly<Record<string, string>> = {
  'importRefusals.foreign':
    'A page of the program always names itself as the origin of what it sends by script, and a page elsewhere is not given the answer.',
  'checkRefusals.busy':
    'It takes four records that are all looked through at that very moment, and no browser can hold one of them up.',
}
