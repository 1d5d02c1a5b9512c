import { keepBytes, theDisk } from '../../../lib/files/storedBytes.ts'

// Writes half a file, says so, and waits to be killed. Its argument is the folder of files.
const [, , folder = ''] = process.argv
const all = Buffer.from('half of it, and then the power went', 'latin1')

await keepBytes(folder, all, {
  ...theDisk,
  write: async (file, bytes) => {
    await file.writeFile(bytes.subarray(0, 10))
    await file.sync()
    process.stdout.write('half\n')
    await new Promise((resolve) => setTimeout(resolve, 600_000))
  },
})
