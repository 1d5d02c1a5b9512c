/**
 * Refusals that nobody can meet at a browser, whatever a page sends, each with the reason. What a request can be rewritten
 * to meet does not belong here.
 */
export const notMetInABrowser: Readonly<Record<string, string>> = {}
