/** What the person who started a command can mend. Its message is a plain sentence and all that is shown. */
export class Refusal extends Error {}

/**
 * Runs a command and turns a refusal into its sentence and exit code 1.
 *
 * @param {() => Promise<void>} command
 */
export async function runCommand(command) {
  try {
    await command()
  } catch (problem) {
    console.error(problem instanceof Refusal ? problem.message : problem)
    process.exit(1)
  }
}
