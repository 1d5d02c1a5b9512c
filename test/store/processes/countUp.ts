// A process of its own: counts the notebook's edits up, each time by reading and then writing what was read plus one.
import { openDatabase } from '../../../lib/store/database.ts'

const [path = '', id = '', times = '0'] = process.argv.slice(2)
const database = openDatabase(path)
for (let time = 0; time < Number(times); time += 1) {
  await database.write(async (tables) => {
    const { edit } = await tables.notebook.findUniqueOrThrow({ where: { id } })
    await tables.notebook.update({ where: { id }, data: { edit: edit + 1 } })
  })
}
await database.close()
