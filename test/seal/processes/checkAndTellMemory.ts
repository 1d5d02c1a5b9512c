import { readFileSync } from 'node:fs'
import { checkRecord } from '../../../lib/seal/checkRecord.ts'

// Checks the files that it is given and prints the most memory that it has had, before and after, in kilobytes.
const start = process.resourceUsage().maxRSS
for (const file of process.argv.slice(2)) await checkRecord(readFileSync(file))
process.stdout.write(JSON.stringify({ start, most: process.resourceUsage().maxRSS }))
