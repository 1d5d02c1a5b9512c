// A process of its own: eight writers at once, who say the id of each notebook once it is acknowledged, until killed.
import { writeSync } from 'node:fs'
import { openDatabase } from '../../../lib/store/database.ts'
import { newNotebookId } from '../../../lib/store/randomToken.ts'

const [path = ''] = process.argv.slice(2)
const database = openDatabase(path)
const at = new Date('2025-06-01T18:00:00Z')

async function writeForEver(): Promise<never> {
  for (;;) {
    const id = newNotebookId()
    await database.write((tables) =>
      tables.notebook.create({
        data: { id, document: 'x'.repeat(20_000), example: false, createdAt: at, updatedAt: at },
      }),
    )
    writeSync(1, `${id}\n`)
  }
}

await Promise.all(Array.from({ length: 8 }, writeForEver))
