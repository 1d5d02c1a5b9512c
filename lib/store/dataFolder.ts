/**
 * Where this install keeps its data: the folder named by MEARING_DATA, else `data` in the folder the program was started
 * in, which is the project's own for every script of package.json. Read at each call, so that a test can point elsewhere.
 *
 * The path stays a plain string on purpose: a path joined onto the working directory is followed by the Next build,
 * which then copies the data along.
 */
export function dataFolder(): string {
  const setting = process.env.MEARING_DATA?.trim()
  return setting === undefined || setting === '' ? 'data' : setting
}

/** The one database file of the install. */
export function databasePath(): string {
  return `${dataFolder()}/mearing.db`
}
