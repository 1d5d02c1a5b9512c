/** What a hash is called on a screen. Papers print `hashLabel`, by which old ones are checked, and say there what it proves. */
export const checkNumberWords = { name: 'Check number', technical: 'SHA-256' } as const
